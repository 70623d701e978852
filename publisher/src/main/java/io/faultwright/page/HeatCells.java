package io.faultwright.page;

import io.faultwright.adequacy.Tally;
import io.faultwright.page.HeatTable.Cell;
import io.faultwright.page.HeatTable.Level;

/** Tallies as cells of a {@link HeatTable}. */
final class HeatCells {
  /** From this many per cent on, most is there, or some. */
  private static final int MOST = 70;

  private static final int SOME = 30;

  private HeatCells() {}

  /** {@code shown/of}. */
  static Cell count(Tally tally) {
    return cell(tally, tally.shown() + "/" + tally.of());
  }

  /** Per cent; never 0 where there is something. */
  static Cell percent(Tally tally) {
    boolean trace = tally.shown() > 0 && tally.percent() == 0;
    return cell(tally, trace ? "< 1 %" : tally.percent() + " %");
  }

  private static Cell cell(Tally tally, String text) {
    return tally.of() == 0 ? new Cell("–", Level.VOID.word()) : new Cell(text, level(tally).word());
  }

  private static Level level(Tally tally) {
    if (tally.whole()) {
      return Level.WHOLE;
    }
    if (tally.shown() == 0) {
      return Level.NONE;
    }
    if (tally.percent() >= MOST) {
      return Level.MOST;
    }
    return tally.percent() >= SOME ? Level.SOME : Level.FEW;
  }
}
