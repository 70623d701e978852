package io.faultwright.page;

import io.faultwright.adequacy.Tally;
import io.faultwright.page.HeatTable.Cell;
import io.faultwright.page.HeatTable.Level;

/** Tallies as cells of a {@link HeatTable}. */
final class HeatCells {
  /** From this many per cent on, most is there. */
  private static final int MOST = 70;

  private HeatCells() {}

  /** {@code shown/of}. */
  static Cell count(Tally tally) {
    return cell(tally, tally.shown() + "/" + tally.of());
  }

  /** Per cent. */
  static Cell percent(Tally tally) {
    return cell(tally, tally.percent() + " %");
  }

  private static Cell cell(Tally tally, String text) {
    return tally.of() == 0
        ? new Cell("–", Level.VOID.word())
        : new Cell(text, level(tally).word());
  }

  private static Level level(Tally tally) {
    if (tally.whole()) {
      return Level.WHOLE;
    }
    if (tally.shown() == 0) {
      return Level.NONE;
    }
    return tally.percent() >= MOST ? Level.MOST : Level.SOME;
  }
}
