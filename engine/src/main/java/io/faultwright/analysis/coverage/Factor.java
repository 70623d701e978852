package io.faultwright.analysis.coverage;

import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.model.Value;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * An axis of a space, as one of the things that are paired: its levels are the classes of values
 * that the rules tell apart.
 *
 * @param axis its position in the space
 * @param subject what the axis is about
 * @param cells for each level its cells, at least one
 * @param axisCells the cells of the axis
 */
public record Factor(int axis, Axis.Subject subject, List<BitSet> cells, List<Cell> axisCells) {
  static Factor of(int position, Axis axis) {
    List<Integer> groups = axis.groups().stream().distinct().toList();
    List<BitSet> cells =
        groups.stream()
            .map(
                group -> {
                  BitSet set = new BitSet();
                  IntStream.range(0, axis.cells().size())
                      .filter(cell -> axis.groups().get(cell).equals(group))
                      .forEach(set::set);
                  return set;
                })
            .toList();
    return new Factor(position, axis.subject(), cells, axis.cells());
  }

  public int levels() {
    return cells.size();
  }

  /** The level at which a case stands; empty where that is not known. */
  OptionalInt level(Observed observed) {
    return IntStream.range(0, levels())
        .filter(level -> cells.get(level).stream().anyMatch(cell -> holds(cell, observed)))
        .findFirst();
  }

  private boolean holds(int at, Observed observed) {
    Cell cell = axisCells.get(at);
    if (subject instanceof Axis.OfSide of) {
      return cell instanceof Cell.SideOf side
          && observed
              .band(of.reading())
              .flatMap(band -> observed.amount(of.reading()).map(band::side))
              .filter(side.side()::equals)
              .isPresent();
    }
    return subject instanceof Axis.OfReading of
        && observed.value(of.reading()).filter(value -> holds(cell, value)).isPresent();
  }

  private static boolean holds(Cell cell, Value value) {
    if (cell instanceof Cell.Word word) {
      return value.equals(new Value.Word(word.value()));
    }
    if (cell instanceof Cell.Stretch stretch) {
      return value instanceof Value.Number number && stretch.interval().contains(number.amount());
    }
    return cell instanceof Cell.NotTaken && value instanceof Value.NotTaken;
  }

  /** Whether a level is something a technician can observe. */
  boolean isObservable(int level) {
    return cells.get(level).stream()
        .mapToObj(axisCells::get)
        .anyMatch(cell -> !(cell instanceof Cell.Absent) && !(cell instanceof Cell.NoFigure));
  }
}
