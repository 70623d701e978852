package io.faultwright.measure;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Something that rules test. */
sealed interface Column {
  /** Id of the reading. */
  String id();

  /** The part that holds everything. */
  Part whole();

  /**
   * A quantity.
   *
   * @param low lowest possible whole number
   * @param high highest possible whole number
   * @param step distance of the numbers at which it may be cut
   * @param unit of all of them
   */
  record Amount(String id, int low, int high, int step, String unit) implements Column {
    @Override
    public Part whole() {
      return Span.closed(low, high);
    }
  }

  /** A choice: exactly one of its values. */
  record Choice(String id, List<String> values) implements Column {
    @Override
    public Part whole() {
      return new Values(
          IntStream.range(0, values.size()).boxed().collect(Collectors.toCollection(TreeSet::new)));
    }
  }

  /** A quantity that is judged against limits: below, within, above. */
  record Judged(String id) implements Column {
    static final List<String> SIDES = List.of("below", "within", "above");

    @Override
    public Part whole() {
      return new Choice(id, SIDES).whole();
    }
  }
}
