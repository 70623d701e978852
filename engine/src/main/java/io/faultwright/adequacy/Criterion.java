package io.faultwright.adequacy;

import java.util.Locale;

/** What the cases of a symptom can be measured by. */
public enum Criterion {
  /** Every rule fires in a case. */
  RULES("rules fired"),
  /** Every condition comes out true in a case and false in another. */
  CONDITIONS("conditions met and not met"),
  /**
   * Every condition decides its rule on its own (modified condition/decision coverage, as DO-178C
   * defines it; unique cause, and masking where conditions hang together).
   */
  MC_DC("conditions that decide (MC/DC)"),
  /** Values on both sides of every threshold and limit (ISO/IEC/IEEE 29119-4). */
  BOUNDARIES("boundary values"),
  /** Every fault is concluded in a case. */
  FAULTS("faults concluded"),
  /** Every two classes of two readings stand together in a case. */
  PAIRS("pairs of readings"),
  /** Every answer on the chart is given in a case. */
  CHART("answers on the chart");

  private final String title;

  Criterion(String title) {
    this.title = title;
  }

  /** As a table's heading says it. */
  public String title() {
    return title;
  }

  /** The word in outputs and options, for instance {@code mc-dc}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
