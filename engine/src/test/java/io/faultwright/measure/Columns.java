package io.faultwright.measure;

import java.util.List;
import java.util.stream.IntStream;

/** Columns of generated tables. */
final class Columns {
  private static final int TOP = 100;
  private static final int STEP = 5;

  private Columns() {}

  /** Quantities from 0 to 100 K and choices of four values, in turn. */
  static List<Column> mixed(int count) {
    return IntStream.range(0, count).mapToObj(i -> i % 2 == 0 ? amount(i) : choice(i, 4)).toList();
  }

  /** Quantities that are cut at 25, 50 and 75 only, and choices of four values, in turn. */
  static List<Column> coarse(int count) {
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                i % 2 == 0
                    ? new Column.Amount("quantity-" + i, 0, TOP, TOP / 5, "K")
                    : choice(i, 4))
        .toList();
  }

  static List<Column> choices(int count, int values) {
    return IntStream.range(0, count).<Column>mapToObj(i -> choice(i, values)).toList();
  }

  static List<Column> amounts(int count) {
    return IntStream.range(0, count).mapToObj(Columns::amount).toList();
  }

  private static Column amount(int number) {
    return new Column.Amount("quantity-" + number, 0, TOP, STEP, "K");
  }

  private static Column choice(int number, int values) {
    return new Column.Choice(
        "choice-" + number, IntStream.range(0, values).mapToObj(i -> "v" + i).toList());
  }
}
