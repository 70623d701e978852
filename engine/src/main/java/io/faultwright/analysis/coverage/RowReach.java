package io.faultwright.analysis.coverage;

import io.faultwright.analysis.judge.Observed;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval.End;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where a row of limits has a say: in its own stretch, or up to the rows next to its point. */
public final class RowReach {
  private final LimitsTable table;
  private final Row row;

  public RowReach(LimitsTable table, Row row) {
    this.table = table;
    this.row = row;
  }

  /** Whether the limits of a machine depend on the row. */
  public boolean includes(Observed observed) {
    return IntStream.range(0, row.at().size())
        .allMatch(
            i ->
                observed
                    .amount(table.drivers().get(i))
                    .filter(value -> includes(i, value, observed))
                    .isPresent());
  }

  private boolean includes(int driver, BigFraction value, Observed observed) {
    if (table.between().equals(Optional.of(Between.STEP))) {
      return row.at().get(driver).contains(value);
    }
    TreeSet<BigFraction> points = new TreeSet<>(BigFraction::compareTo);
    table.rows().stream()
        .filter(other -> observed.builds().stream().allMatch(b -> b.satisfies(other.builds())))
        .forEach(other -> points.add(point(other, driver)));
    BigFraction own = point(row, driver);
    return own.equals(points.floor(value)) || own.equals(points.ceiling(value));
  }

  private static BigFraction point(Row row, int driver) {
    return row.at().get(driver).low().map(End::value).orElseThrow();
  }
}
