package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Tables in which every situation is answered by exactly one rule: the whole space, split again and
 * again, each piece a rule that tests only what its splits asked.
 */
final class PartitionTable {
  private final List<Column> columns;
  private final Random random;
  private final boolean mixedEnds;

  private PartitionTable(List<Column> columns, long seed, boolean mixedEnds) {
    this.columns = columns;
    this.random = new Random(seed);
    this.mixedEnds = mixedEnds;
  }

  /**
   * A table where a threshold belongs to the upper piece, as {@code at least} and {@code below}.
   *
   * @param conclusions how many different ones; neighbours always differ
   */
  static Table of(List<Column> columns, int rules, int conclusions, long seed) {
    return new PartitionTable(columns, seed, false).table(rules, conclusions);
  }

  /** A table where a threshold belongs to either piece. */
  static Table withMixedEnds(List<Column> columns, int rules, int conclusions, long seed) {
    return new PartitionTable(columns, seed, true).table(rules, conclusions);
  }

  private Table table(int rules, int conclusions) {
    List<Node> leaves = new ArrayList<>();
    Node root = new Node(Table.everything(columns));
    leaves.add(root);
    while (leaves.size() < rules) {
      int which = random.nextInt(leaves.size());
      Node leaf = leaves.get(which);
      if (split(leaf)) {
        leaves.set(which, leaf.halves.get(0));
        leaves.add(leaf.halves.get(1));
      }
    }
    List<Row> rows = new ArrayList<>();
    collect(root, rows, conclusions);
    Collections.shuffle(rows, random);
    return new Table(columns, rows);
  }

  /** A piece of the space; its halves where it was split. */
  private static final class Node {
    private final List<Part> parts;
    private List<Node> halves = List.of();

    Node(List<Part> parts) {
      this.parts = parts;
    }

    Node with(int column, Part part) {
      List<Part> changed = new ArrayList<>(parts);
      changed.set(column, part);
      return new Node(changed);
    }
  }

  private boolean split(Node leaf) {
    int column = random.nextInt(columns.size());
    Optional<List<Part>> halves = halves(columns.get(column), leaf.parts.get(column));
    halves.ifPresent(
        both -> leaf.halves = both.stream().map(half -> leaf.with(column, half)).toList());
    return halves.isPresent();
  }

  private Optional<List<Part>> halves(Column column, Part part) {
    return part instanceof Span span
        ? cut((Column.Amount) column, span)
        : dealt(new ArrayList<>(((Values) part).chosen()));
  }

  private Optional<List<Part>> cut(Column.Amount column, Span span) {
    List<Integer> cuts = new ArrayList<>();
    for (int value = column.low() + column.step(); value < column.high(); value += column.step()) {
      int cut = 2 * value + (mixedEnds ? random.nextInt(2) : 0);
      if (span.from() < cut && cut < span.to()) {
        cuts.add(cut);
      }
    }
    if (cuts.isEmpty()) {
      return Optional.empty();
    }
    int cut = cuts.get(random.nextInt(cuts.size()));
    return Optional.of(List.of(new Span(span.from(), cut), new Span(cut, span.to())));
  }

  private Optional<List<Part>> dealt(List<Integer> values) {
    if (values.size() < 2) {
      return Optional.empty();
    }
    Collections.shuffle(values, random);
    int size = 1 + random.nextInt(values.size() - 1);
    return Optional.of(
        List.of(values(values.subList(0, size)), values(values.subList(size, values.size()))));
  }

  private static Part values(List<Integer> chosen) {
    SortedSet<Integer> sorted = new TreeSet<>(chosen);
    return new Values(sorted);
  }

  /** Leaves from left to right, so that halves of one piece never conclude the same. */
  private static void collect(Node node, List<Row> rows, int conclusions) {
    node.halves.forEach(half -> collect(half, rows, conclusions));
    if (node.halves.isEmpty()) {
      int number = rows.size();
      rows.add(
          new Row(
              String.format(Locale.ROOT, "rule-%05d", number),
              node.parts,
              String.format(Locale.ROOT, "fault-%05d", number % conclusions)));
    }
  }
}
