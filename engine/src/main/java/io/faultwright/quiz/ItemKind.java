package io.faultwright.quiz;

import java.util.Locale;

/** What an item asks for. */
public enum ItemKind {
  /** What the readings point to. */
  WHICH_FAULT,
  /** Which reading separates two faults that look alike. */
  WHAT_SEPARATES,
  /** Whether a reading is below, within or above its limits. */
  AGAINST_LIMITS,
  /** What must be right before a symptom is worked, and what follows where it is not. */
  WHAT_FIRST,
  /** What is read next. */
  NEXT_CHECK,
  /** In which order steps are done. */
  SAFE_ORDER,
  /** A question that a trainer wrote. */
  OWN;

  /** As in files, for instance {@code which-fault}. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
