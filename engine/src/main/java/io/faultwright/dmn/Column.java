package io.faultwright.dmn;

import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One input of a symptom's table, cut into the classes that conditions tell apart. The class after
 * the named ones, where there is one, is that nothing is known.
 */
sealed interface Column {
  /** How many classes there are. */
  int size();

  /** What is looked at, as an expression. */
  String expression();

  /** The type of the expression. */
  String type();

  /** Some classes, at least one, as a unary test that no other class meets. */
  String entry(BitSet classes);

  private static String entry(BitSet classes, int named, Stream<String> tests) {
    if (classes.cardinality() == named + 1) {
      return "-";
    }
    Stream<String> unknown = classes.get(named) ? Stream.of("null") : Stream.of();
    return Stream.concat(tests, unknown).collect(Collectors.joining(", "));
  }

  /** Machines that nothing in the symptom tells apart; without a group: not offered for it. */
  record Groups(List<List<Build>> builds) implements Column {
    @Override
    public int size() {
      return builds.size() + 1;
    }

    @Override
    public String expression() {
      return Names.GROUP;
    }

    @Override
    public String type() {
      return "string";
    }

    @Override
    public String entry(BitSet classes) {
      return Column.entry(
          classes,
          builds.size(),
          classes.stream().filter(i -> i < builds.size()).mapToObj(i -> Feel.string(name(i))));
    }

    static String name(int group) {
      return "group " + (group + 1);
    }
  }

  /** A choice. */
  record Words(String reading, List<String> values) implements Column {
    @Override
    public int size() {
      return values.size() + 1;
    }

    @Override
    public String expression() {
      return Names.of(reading);
    }

    @Override
    public String type() {
      return "string";
    }

    @Override
    public String entry(BitSet classes) {
      return Column.entry(
          classes,
          values.size(),
          classes.stream()
              .filter(i -> i < values.size())
              .mapToObj(i -> Feel.string(values.get(i))));
    }
  }

  /**
   * A quantity.
   *
   * @param pieces stretches in ascending order, without a gap between them
   * @param computed whether it is not observed
   * @param expression its value, multiplied
   * @param times by how much
   */
  record Numbers(
      String reading, List<Interval> pieces, boolean computed, String expression, BigFraction times)
      implements Column {
    /** Every number that a test can name. */
    List<BigFraction> ends() {
      return IntStream.range(0, pieces.size())
          .mapToObj(i -> run(i, i))
          .flatMap((Interval run) -> Grid.ends(run))
          .toList();
    }

    /** Some pieces in a row; what is computed has no range of its own. */
    private Interval run(int first, int last) {
      boolean open = computed && first == 0;
      boolean endless = computed && last == pieces.size() - 1;
      return new Interval(
          open ? Optional.empty() : pieces.get(first).low(),
          endless ? Optional.empty() : pieces.get(last).high());
    }

    @Override
    public int size() {
      return pieces.size() + 1;
    }

    @Override
    public String type() {
      return "number";
    }

    @Override
    public String entry(BitSet classes) {
      List<String> runs = new ArrayList<>();
      int from = classes.nextSetBit(0);
      while (from >= 0 && from < pieces.size()) {
        int to = Math.min(classes.nextClearBit(from), pieces.size());
        runs.add(Feel.interval(run(from, to - 1), times));
        from = classes.nextSetBit(to);
      }
      return Column.entry(classes, pieces.size(), runs.stream());
    }
  }

  /** Where a quantity lies against its limits. */
  record Sides(String reading) implements Column {
    @Override
    public int size() {
      return Side.values().length + 1;
    }

    @Override
    public String expression() {
      return Names.side(reading);
    }

    @Override
    public String type() {
      return "string";
    }

    @Override
    public String entry(BitSet classes) {
      int sides = Side.values().length;
      return Column.entry(
          classes,
          sides,
          classes.stream()
              .filter(i -> i < sides)
              .mapToObj(i -> Feel.string(name(Side.values()[i]))));
    }

    static String name(Side side) {
      return switch (side) {
        case BELOW -> "below limits";
        case WITHIN -> "within limits";
        case ABOVE -> "above limits";
      };
    }
  }

  /**
   * Whether a reading is known to be impossible to take: first yes, then no.
   *
   * @param expression true where it is
   */
  record Untaken(String reading, String expression) implements Column {
    static final int YES = 0;

    @Override
    public int size() {
      return 2;
    }

    @Override
    public String type() {
      return "boolean";
    }

    @Override
    public String entry(BitSet classes) {
      return classes.cardinality() == 2 ? "-" : Boolean.toString(classes.get(YES));
    }
  }
}
