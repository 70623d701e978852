package io.faultwright.analysis.space;

import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Interval;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;

/**
 * One dimension of a space.
 *
 * @param subject what it is about
 * @param cells its classes; every situation lies in exactly one
 * @param groups for each cell the number of its group: cells of a group differ only in what the
 *     limits of other readings make of them, not in any condition
 */
public record Axis(Subject subject, List<Cell> cells, List<Integer> groups) {
  public Axis {
    cells = List.copyOf(cells);
    groups = List.copyOf(groups);
  }

  /** What an axis is about. */
  public sealed interface Subject {}

  /** The equipment. */
  public record OfEquipment() implements Subject {}

  /** The value of a reading. */
  public record OfReading(String reading) implements Subject {}

  /** The place of a reading against its limits. */
  public record OfSide(String reading) implements Subject {}

  /** How many classes of cells conditions tell apart. */
  int groupCount() {
    return (int) groups.stream().distinct().count();
  }

  /** The cells that satisfy the predicate. */
  public BitSet where(Predicate<Cell> predicate) {
    BitSet chosen = new BitSet(cells.size());
    for (int cell = 0; cell < cells.size(); cell++) {
      chosen.set(cell, predicate.test(cells.get(cell)));
    }
    return chosen;
  }

  /** How many cells are stretches of a quantity; they come first, in ascending order. */
  int stretches() {
    int count = cells.size();
    while (count > 0 && !(cells.get(count - 1) instanceof Cell.Stretch)) {
      count--;
    }
    return count;
  }

  /** The stretches inside an interval whose ends lie between stretches. */
  BitSet within(Interval interval) {
    BitSet inside = new BitSet(cells.size());
    int from = firstNot(cell -> interval.low().isPresent() && cell.isBelow(interval));
    int to = firstNot(cell -> interval.high().isEmpty() || !cell.isAbove(interval));
    if (from < to) {
      inside.set(from, to);
    }
    return inside;
  }

  /** The first stretch without a property that all before it have. */
  private int firstNot(Predicate<Cell.Stretch> property) {
    int low = 0;
    int high = stretches();
    while (low < high) {
      int middle = (low + high) / 2;
      if (property.test((Cell.Stretch) cells.get(middle))) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The three cells below, within and above limits. */
  public BitSet sides() {
    return where(cell -> cell instanceof Cell.SideOf);
  }

  /** The cell of a side of the limits. */
  public BitSet side(Side side) {
    return where(cell -> cell instanceof Cell.SideOf at && at.side() == side);
  }

  /** Every cell. */
  public BitSet all() {
    return where(cell -> true);
  }
}
