package io.faultwright.run;

import java.util.Locale;

/** How far a situation got through a symptom. */
public enum Status {
  /** No such symptom. */
  UNKNOWN_SYMPTOM,
  /** No published build has the given equipment facts. */
  NO_SUCH_EQUIPMENT,
  /** The symptom is not offered for this equipment. */
  DOES_NOT_APPLY,
  /** A value that its reading cannot have: did you mean another? */
  CHECK_VALUES,
  /** A combination that cannot happen: take these readings again. */
  TAKE_AGAIN,
  /** The readings that define the complaint say otherwise. */
  NOT_THIS_SYMPTOM,
  /** Something that must be right first is not known yet. */
  ASK_FIRST,
  /** Something that must be right first is not: work another symptom. */
  REFERRED,
  /** The rules answer. */
  ANSWERED,
  /** No answer yet; more readings may bring one. */
  NOTHING_YET,
  /** No rule that answers can fire any more. */
  NO_ANSWER;

  /** The word in outputs, for instance {@code nothing-yet}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the situation can occur in the symptom as far as its equipment and ranges tell. */
  public boolean runnable() {
    return compareTo(CHECK_VALUES) > 0;
  }

  /** Whether the rules were looked at. */
  public boolean worked() {
    return compareTo(ANSWERED) >= 0;
  }
}
