package io.faultwright.dmn;

import java.util.Locale;

/** How far the rules of a symptom get with what is known. */
enum Stage {
  /** No published machine to which the symptom applies. */
  NO_SUCH_MACHINE,
  /** A {@code never} says that this cannot be: take the readings again. */
  TAKE_AGAIN,
  /** What defines the complaint says otherwise. */
  NOT_THIS_SYMPTOM,
  /** What must be right first is not known yet. */
  ASK_FIRST,
  /** What must be right first is not. */
  SENT_ELSEWHERE,
  /** The rules give an answer. */
  ANSWERED,
  /** The rules give none, or not yet. */
  NOTHING_YET;

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
