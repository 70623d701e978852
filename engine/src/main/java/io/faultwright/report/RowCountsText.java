package io.faultwright.report;

import io.faultwright.field.RowCounts;

/** How many rows there were and what became of them, in a line. */
public final class RowCountsText {
  private RowCountsText() {}

  /** For instance {@code 7 rows: 6 run (3 agreed, 1 disagreed, 2 without …), 1 skipped}. */
  public static String line(RowCounts counts) {
    return Counts.of(counts.read(), "row")
        + " read: "
        + counts.run()
        + " run, "
        + counts.skipped()
        + " skipped; of those run, "
        + agreement(counts.agreed(), counts.disagreed(), counts.open())
        + "\n";
  }

  static String agreement(long agreed, long disagreed, long open) {
    return agreed + " agreed, " + disagreed + " disagreed, " + open + " without a confirmed fault";
  }
}
