package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rules with a test that changes nothing, because all that the rule would gain without it already
 * gets the rule's own conclusion.
 */
final class Idle {
  private Idle() {}

  /** The table with other conclusions, taken from the same ones, so that every test matters. */
  static Table mended(Table table) {
    List<String> conclusions = table.rows().stream().map(Row::conclusion).distinct().toList();
    Table mended = table;
    List<Integer> idle = rows(mended);
    for (int round = 1; !idle.isEmpty(); round++) {
      List<Row> rows = new ArrayList<>(mended.rows());
      for (int which : idle) {
        Row row = rows.get(which);
        int next = conclusions.indexOf(row.conclusion()) + round;
        rows.set(which, new Row(row.id(), row.parts(), conclusions.get(next % conclusions.size())));
      }
      mended = new Table(table.columns(), rows);
      idle = rows(mended);
    }
    return mended;
  }

  /** Positions of the rows with such a test. */
  static List<Integer> rows(Table table) {
    return IntStream.range(0, table.rows().size())
        .parallel()
        .filter(which -> isIdle(table, table.rows().get(which)))
        .boxed()
        .toList();
  }

  private static boolean isIdle(Table table, Row row) {
    for (int column = 0; column < table.columns().size(); column++) {
      Part whole = table.columns().get(column).whole();
      if (!row.parts().get(column).equals(whole)
          && gainsNothing(table, row, row.with(column, whole))) {
        return true;
      }
    }
    return false;
  }

  /** Where a rule would gain a gap as well, its test matters; nothing but a gap is no other row. */
  private static boolean gainsNothing(Table table, Row row, Row wider) {
    boolean own = false;
    for (Row other : table.rows()) {
      if (other != row && other.meets(wider)) {
        if (!other.conclusion().equals(row.conclusion())) {
          return false;
        }
        own = true;
      }
    }
    return own;
  }
}
