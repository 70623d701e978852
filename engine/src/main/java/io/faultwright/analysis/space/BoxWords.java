package io.faultwright.analysis.space;

import io.faultwright.finding.RegionTest;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.BuildSets;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A box as tests in the rule language; axes that accept all that can happen are left out. */
public final class BoxWords {
  private static final String TAKEN = "not " + RuleText.CANNOT_BE_TAKEN;

  private final Space space;
  private final KnowledgeBase knowledge;
  private final RuleText text;
  private final BitSet[] occurring;

  /**
   * @param possible the situations that can happen; cells outside them are not worth a word
   */
  public BoxWords(Space space, int possible) {
    this.space = space;
    this.knowledge = space.knowledge();
    this.text = new RuleText(knowledge);
    this.occurring = space.diagrams().occurring(possible);
  }

  /** Tests that hold together in the box, equipment first. */
  public List<RegionTest> tests(Box box) {
    List<RegionTest> tests = new ArrayList<>();
    for (int axis = 0; axis < space.axes().size(); axis++) {
      Axis about = space.axes().get(axis);
      BitSet cells = (BitSet) box.cells().get(axis).clone();
      cells.and(occurring[axis]);
      if (!cells.equals(occurring[axis])) {
        tests.addAll(tests(about, cells));
      }
    }
    return withoutImplied(tests);
  }

  /** Where limits are spoken of, the reading was taken: that need not be said as well. */
  private static List<RegionTest> withoutImplied(List<RegionTest> tests) {
    return tests.stream()
        .filter(
            test ->
                !test.accepts().equals(TAKEN)
                    || tests.stream()
                        .noneMatch(
                            other -> other != test && other.reading().equals(test.reading())))
        .toList();
  }

  private List<RegionTest> tests(Axis axis, BitSet cells) {
    if (axis.subject() instanceof Axis.OfReading of) {
      return test(of.reading(), values(axis, of.reading(), cells));
    }
    if (axis.subject() instanceof Axis.OfSide of) {
      return test(of.reading(), sides(axis, cells));
    }
    return equipment(axis, cells);
  }

  /** No test where the equipment does not have the reading at all: the equipment says so. */
  private static List<RegionTest> test(String reading, List<String> words) {
    return words.isEmpty() ? List.of() : List.of(new RegionTest(reading, listed(words)));
  }

  private List<String> values(Axis axis, String reading, BitSet cells) {
    List<String> words = new ArrayList<>();
    cells.stream()
        .mapToObj(axis.cells()::get)
        .filter(Cell.Word.class::isInstance)
        .forEach(cell -> words.add(((Cell.Word) cell).value()));
    words.addAll(stretches(axis, reading, cells));
    if (cells.stream().mapToObj(axis.cells()::get).anyMatch(Cell.NotTaken.class::isInstance)) {
      words.add(RuleText.CANNOT_BE_TAKEN);
    }
    return words;
  }

  private List<String> stretches(Axis axis, String reading, BitSet cells) {
    List<String> words = new ArrayList<>();
    int cell = cells.nextSetBit(0);
    while (cell >= 0 && axis.cells().get(cell) instanceof Cell.Stretch first) {
      int last = cell;
      while (cells.get(last + 1) && axis.cells().get(last + 1) instanceof Cell.Stretch) {
        last++;
      }
      Cell.Stretch end = (Cell.Stretch) axis.cells().get(last);
      words.add(stretch(reading, new Interval(first.interval().low(), end.interval().high())));
      cell = cells.nextSetBit(last + 1);
    }
    return words;
  }

  /** A stretch without the ends that are the reading's range anyway. */
  private String stretch(String reading, Interval interval) {
    Domain.Measured domain = (Domain.Measured) knowledge.readings().get(reading).domain();
    Optional<Interval.End> low =
        interval.low().filter(end -> !Optional.of(end).equals(domain.range().low()));
    Optional<Interval.End> high =
        interval.high().filter(end -> !Optional.of(end).equals(domain.range().high()));
    return low.isEmpty() && high.isEmpty()
        ? TAKEN
        : text.interval(reading, new Interval(low, high));
  }

  /** Nothing where every side that occurs is accepted: then it only matters that it was taken. */
  private List<String> sides(Axis axis, BitSet cells) {
    BitSet missing = axis.where(Cell.NoFigure.class::isInstance);
    BitSet sides = axis.sides();
    if (acceptsAll(axis, cells, sides) && acceptsAll(axis, cells, missing)) {
      return List.of();
    }
    List<String> words = new ArrayList<>();
    if (cells.intersects(sides)) {
      words.add(acceptsAll(axis, cells, sides) ? "limits known" : limits(axis, cells));
    }
    if (cells.intersects(missing)) {
      words.add("no limits known");
    }
    return words;
  }

  /** Whether cells hold those of some kind that occur. */
  private boolean acceptsAll(Axis axis, BitSet cells, BitSet kind) {
    BitSet left = (BitSet) occurring[space.position(axis.subject()).orElseThrow()].clone();
    left.and(kind);
    left.andNot(cells);
    return left.isEmpty();
  }

  private static String limits(Axis axis, BitSet cells) {
    Set<Side> sides = EnumSet.noneOf(Side.class);
    for (Side side : Side.values()) {
      if (cells.intersects(axis.side(side))) {
        sides.add(side);
      }
    }
    return RuleText.limits(new AgainstLimits(sides));
  }

  private List<RegionTest> equipment(Axis axis, BitSet cells) {
    List<Build> inside = builds(axis, cells);
    Condition condition = BuildSets.byFacts(knowledge.equipment(), scope(axis)).condition(inside);
    return condition instanceof Condition.Any ? named(inside) : tests(condition);
  }

  private List<Build> scope(Axis axis) {
    return builds(axis, occurring[0]);
  }

  private List<RegionTest> tests(Condition condition) {
    return condition
        .tests()
        .map(test -> new RegionTest(test.subject(), text.pattern(test.subject(), test.pattern())))
        .toList();
  }

  private static List<RegionTest> named(List<Build> inside) {
    return List.of(
        new RegionTest(
            Equipment.MODEL,
            inside.stream().map(Build::toString).collect(Collectors.joining("; "))));
  }

  private static List<Build> builds(Axis axis, BitSet cells) {
    return cells.stream()
        .mapToObj(cell -> (Cell.Builds) axis.cells().get(cell))
        .flatMap(cell -> cell.builds().stream())
        .sorted()
        .toList();
  }

  private static String listed(List<String> words) {
    return words.size() == 1 ? words.get(0) : "[" + String.join(", ", words) + "]";
  }
}
