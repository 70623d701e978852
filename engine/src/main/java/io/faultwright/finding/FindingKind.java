package io.faultwright.finding;

import static io.faultwright.finding.Severity.ERROR;
import static io.faultwright.finding.Severity.WARNING;

import java.util.Locale;

/** Every kind of finding; each has a page {@code docs/findings/<slug>.md}. */
public enum FindingKind {
  GAP(ERROR),
  CONTRADICTION(ERROR),
  DEAD_RULE(ERROR),
  LIMITS_MISSING(ERROR),
  OVERLAPPING_LIMITS(ERROR),
  CIRCULAR_REFERRAL(ERROR),
  CASE_FAILED(ERROR),
  MISSING_CAUTION(ERROR),
  FAULT_WITHOUT_REMEDY(ERROR),
  EMPTY_NEVER(ERROR),
  UNRECOGNISED_COMPLAINT(ERROR),
  CHART_DIFFERS(ERROR),
  CHART_ANSWER_MISSING(ERROR),
  CHART_ANSWERS_OVERLAP(ERROR),
  CHART_LOOP(ERROR),
  TIME_UNCLEAR(ERROR),
  PHASE_NEVER_REACHED(ERROR),
  PHASE_NEVER_LEFT(ERROR),
  LINE_NEVER_TAKEN(ERROR),
  TIMER_NEVER_EXPIRES(ERROR),
  LINES_AT_ONCE(ERROR),
  ENERGISED_TOGETHER(ERROR),
  SEQUENCE_NEVER_RESTS(ERROR),
  COURSE_DIFFERS(ERROR),
  LAPSED_SIGNATURE(ERROR),
  BROKEN_SIGNATURE(ERROR),
  OWN_SIGNATURE(ERROR),
  MISSING_SIGNATURE(ERROR),
  ITEM_DIFFERS(ERROR),
  SUBSUMED_RULE(WARNING),
  DUPLICATE_RULE(WARNING),
  IDLE_CONDITION(WARNING),
  UNLISTED_VALUE(WARNING),
  UNUSED_READING(WARNING),
  FAULT_NEVER_CONCLUDED(WARNING),
  RULE_UNTESTED(WARNING),
  CASE_UNCONFIRMED(WARNING),
  INSTEAD_OF_WITHOUT_EFFECT(WARNING),
  AMBIGUOUS_SYMPTOMS(WARNING),
  NARROW_LIMITS(WARNING),
  CHART_STEP_UNREACHED(WARNING),
  SEQUENCE_TOO_LARGE(WARNING),
  UNTRANSLATED(WARNING),
  UNUSED_TRANSLATION(WARNING),
  WITHDRAWN_ITEM(WARNING);

  private final Severity severity;

  FindingKind(Severity severity) {
    this.severity = severity;
  }

  /** Whether it is only found where somebody asks for the sign-offs. */
  public boolean isOfSignOff() {
    return this == LAPSED_SIGNATURE
        || this == BROKEN_SIGNATURE
        || this == OWN_SIGNATURE
        || this == MISSING_SIGNATURE;
  }

  public Severity severity() {
    return severity;
  }

  /** The name in JSON, on the screen and of its page, for instance {@code dead-rule}. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
