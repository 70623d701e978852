package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Tables of many columns, of which each rule tests a few, each for one value. */
final class WideTable {
  private WideTable() {}

  /** Rules of so many conditions each over choices, every rule with a conclusion of its own. */
  static Table of(List<Column> columns, int rules, int conditions, long seed) {
    Random random = new Random(seed);
    List<Row> rows =
        IntStream.range(0, rules)
            .mapToObj(number -> row(columns, number, conditions, random))
            .toList();
    return new Table(columns, rows);
  }

  private static Row row(List<Column> columns, int number, int conditions, Random random) {
    List<Integer> order =
        IntStream.range(0, columns.size()).boxed().collect(Collectors.toCollection(ArrayList::new));
    Collections.shuffle(order, random);
    List<Part> parts = new ArrayList<>(Table.everything(columns));
    for (int column : order.subList(0, conditions)) {
      int values = ((Column.Choice) columns.get(column)).values().size();
      parts.set(column, new Values(new TreeSet<>(List.of(random.nextInt(values)))));
    }
    return new Row(
        String.format(Locale.ROOT, "rule-%05d", number),
        parts,
        String.format(Locale.ROOT, "fault-%05d", number));
  }
}
