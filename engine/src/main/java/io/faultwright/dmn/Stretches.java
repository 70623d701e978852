package io.faultwright.dmn;

import io.faultwright.analysis.space.Cut;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.quantity.Interval;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What limits follow, cut at every figure that its table names: into the figures themselves and the
 * open stretches between them, so that limits are straight, or the same, all over each.
 */
final class Stretches {
  private final Column.Numbers column;

  Stretches(KnowledgeBase kb, LimitsTable table, String driver) {
    Interval range = ((Domain.Measured) kb.readings().get(driver).domain()).range();
    int position = table.drivers().indexOf(driver);
    SortedSet<Cut> cuts = new TreeSet<>();
    table.rows().stream()
        .flatMap(row -> row.at().stream().skip(position).limit(1))
        .flatMap((Interval at) -> Grid.ends(at))
        .forEach(end -> cuts.addAll(Cut.around(end)));
    this.column = Grid.numbers(kb, driver, Cut.pieces(range, cuts));
  }

  Column.Numbers column() {
    return column;
  }

  int count() {
    return column.pieces().size();
  }

  boolean has(int stretch) {
    return stretch >= 0 && stretch < count();
  }

  /** Whether a stretch is a single value. */
  boolean isPoint(int stretch) {
    Interval piece = column.pieces().get(stretch);
    return end(piece.low()).compareTo(end(piece.high())) == 0;
  }

  /** A value inside a stretch. */
  BigFraction inside(int stretch) {
    Interval piece = column.pieces().get(stretch);
    BigFraction low = end(piece.low());
    BigFraction high = end(piece.high());
    return low.add(high).divide(2);
  }

  private static BigFraction end(Optional<Interval.End> end) {
    return end.orElseThrow().value();
  }
}
