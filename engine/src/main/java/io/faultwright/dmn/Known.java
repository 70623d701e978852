package io.faultwright.dmn;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import java.util.BitSet;
import java.util.List;

/**
 * Where a condition is known to hold and where it is known not to, in strong three-valued logic
 * (Kleene, 1938). A test on a reading that the machine does not have, and the contrary of such a
 * test, are both known not to hold.
 *
 * @param holds diagram
 * @param fails diagram
 */
record Known(int holds, int fails) {
  static Known of(Grid grid, Condition condition) {
    return of(grid, condition, true);
  }

  private static Known of(Grid grid, Condition condition, boolean wanted) {
    return condition.match(
        all -> joined(grid, all.parts(), wanted, wanted),
        any -> joined(grid, any.parts(), wanted, !wanted),
        not -> of(grid, not.part(), !wanted),
        test -> of(grid, test, wanted));
  }

  private static Known joined(Grid grid, List<Condition> parts, boolean wanted, boolean every) {
    Diagrams diagrams = grid.diagrams();
    int holds = every ? Diagrams.ALL : Diagrams.NONE;
    int fails = every ? Diagrams.NONE : Diagrams.ALL;
    for (Condition part : parts) {
      Known known = of(grid, part, wanted);
      holds = every ? diagrams.and(holds, known.holds) : diagrams.or(holds, known.holds);
      fails = every ? diagrams.or(fails, known.fails) : diagrams.and(fails, known.fails);
    }
    return new Known(holds, fails);
  }

  private static Known of(Grid grid, Test test, boolean wanted) {
    Diagrams diagrams = grid.diagrams();
    int there = grid.groups(build -> Grid.exists(grid.knowledge(), test, build));
    Known known = ofReading(grid, test);
    int holds = diagrams.and(there, wanted ? known.holds : known.fails);
    int fails = diagrams.and(there, wanted ? known.fails : known.holds);
    return new Known(holds, diagrams.or(fails, diagrams.not(there)));
  }

  private static Known ofReading(Grid grid, Test test) {
    if (!grid.knowledge().readings().containsKey(test.subject())) {
      return new Known(
          grid.groups(build -> build.satisfies(test)),
          grid.groups(build -> !build.satisfies(test)));
    }
    return test.pattern()
        .match(
            oneOf -> ofWord(grid, test.subject(), oneOf),
            within -> ofNumber(grid, test.subject(), within),
            against -> ofSide(grid, test.subject(), against),
            untaken -> ofTaking(grid, test.subject()));
  }

  private static Known ofWord(Grid grid, String reading, OneOf oneOf) {
    List<String> values = ((Column.Words) grid.value(reading)).values();
    BitSet named = new BitSet();
    for (int i = 0; i < values.size(); i++) {
      named.set(i, oneOf.values().contains(values.get(i)));
    }
    return split(grid, reading, named);
  }

  private static Known ofNumber(Grid grid, String reading, InInterval within) {
    Column.Numbers column = (Column.Numbers) grid.value(reading);
    BitSet inside = new BitSet();
    for (int i = 0; i < column.pieces().size(); i++) {
      inside.set(i, Pieces.isIn(column.pieces().get(i), within.interval()));
    }
    return split(grid, reading, inside);
  }

  /** Among the classes in which a value is known. */
  private static Known split(Grid grid, String reading, BitSet holding) {
    BitSet others = new BitSet();
    others.set(0, grid.value(reading).size() - 1);
    others.andNot(holding);
    return new Known(grid.value(reading, holding), grid.value(reading, others));
  }

  private static Known ofSide(Grid grid, String reading, AgainstLimits against) {
    BitSet holding = new BitSet();
    BitSet others = new BitSet();
    for (Side side : Side.values()) {
      holding.set(side.ordinal(), against.sides().contains(side));
      others.set(side.ordinal(), !against.sides().contains(side));
    }
    return new Known(grid.side(reading, holding), grid.side(reading, others));
  }

  private static Known ofTaking(Grid grid, String reading) {
    BitSet taken = new BitSet();
    taken.set(0, grid.value(reading).size() - 1);
    int untaken = grid.untaken(reading);
    return new Known(untaken, grid.diagrams().minus(grid.value(reading, taken), untaken));
  }
}
