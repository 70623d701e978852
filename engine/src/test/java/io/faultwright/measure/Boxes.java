package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

/**
 * How much a union of boxes holds; the boxes may lie on each other. A plain sweep, column by
 * column, that shares nothing with the analyses.
 */
final class Boxes {
  private final Table table;
  private final List<List<Part>> boxes;

  /**
   * @param table whose columns the boxes have
   * @param boxes a part for each column
   */
  Boxes(Table table, List<List<Part>> boxes) {
    this.table = table;
    this.boxes = List.copyOf(boxes);
  }

  /** Lengths of quantities times numbers of values; a single number has no length. */
  BigInteger volume() {
    return measure(piece -> piece instanceof Span span ? span.high() - span.low() : 1);
  }

  /** Pieces that the table's rules can tell apart, choices value by value. */
  BigInteger cells() {
    return measure(piece -> 1);
  }

  private BigInteger measure(ToLongFunction<Part> weight) {
    BitSet all = new BitSet();
    all.set(0, boxes.size());
    return measure(0, all, weight, new HashMap<>());
  }

  private record State(int column, BitSet active) {}

  private BigInteger measure(
      int column, BitSet active, ToLongFunction<Part> weight, Map<State, BigInteger> done) {
    if (active.isEmpty()) {
      return BigInteger.ZERO;
    }
    if (column == table.columns().size()) {
      return BigInteger.ONE;
    }
    State state = new State(column, active);
    BigInteger known = done.get(state);
    if (known == null) {
      known = BigInteger.ZERO;
      for (Part piece : pieces(column)) {
        BigInteger below = measure(column + 1, meeting(column, active, piece), weight, done);
        known = known.add(below.multiply(BigInteger.valueOf(weight.applyAsLong(piece))));
      }
      done.put(state, known);
    }
    return known;
  }

  private BitSet meeting(int column, BitSet active, Part piece) {
    BitSet meeting = new BitSet();
    active.stream().filter(box -> boxes.get(box).get(column).meets(piece)).forEach(meeting::set);
    return meeting;
  }

  private List<Part> pieces(int column) {
    Part whole = table.columns().get(column).whole();
    return whole instanceof Span span ? pieces(column, span) : values((Values) whole);
  }

  private List<Part> pieces(int column, Span whole) {
    SortedSet<Integer> cuts = new TreeSet<>();
    for (Row row : table.rows()) {
      Span span = (Span) row.parts().get(column);
      cuts.add(span.from());
      cuts.add(span.to());
    }
    cuts.add(whole.from());
    cuts.add(whole.to());
    List<Part> pieces = new ArrayList<>();
    int from = whole.from();
    for (int to : cuts.tailSet(whole.from() + 1)) {
      pieces.add(new Span(from, to));
      from = to;
    }
    return pieces;
  }

  private static List<Part> values(Values whole) {
    return whole.chosen().stream().<Part>map(Values::of).toList();
  }
}
