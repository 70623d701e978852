package io.faultwright.analysis.space;

import io.faultwright.finding.RegionTest;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Version;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A box as tests in the rule language; axes that accept all that can happen are left out. */
public final class BoxWords {
  private static final String TAKEN = "not cannot be taken";

  private final Space space;
  private final KnowledgeBase knowledge;
  private final BitSet[] occurring;

  /**
   * @param possible the situations that can happen; cells outside them are not worth a word
   */
  public BoxWords(Space space, int possible) {
    this.space = space;
    this.knowledge = space.knowledge();
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
      words.add("cannot be taken");
    }
    return words;
  }

  private List<String> stretches(Axis axis, String reading, BitSet cells) {
    List<String> words = new ArrayList<>();
    int cell = cells.nextSetBit(0);
    while (cell >= 0 && axis.cells().get(cell) instanceof Cell.Stretch first) {
      int last = cell;
      while (cells.get(last + 1)
          && last + 1 < axis.cells().size()
          && axis.cells().get(last + 1) instanceof Cell.Stretch) {
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
    String unit = domain.unit().symbol();
    if (low.isPresent() && high.isPresent()) {
      return both(low.get(), high.get(), unit);
    }
    return low.map(end -> (end.included() ? "at least " : "above ") + amount(end, unit))
        .or(() -> high.map(end -> (end.included() ? "at most " : "below ") + amount(end, unit)))
        .orElse(TAKEN);
  }

  private static String both(Interval.End low, Interval.End high, String unit) {
    if (low.value().equals(high.value())) {
      return amount(low, unit);
    }
    if (low.included() && high.included()) {
      return Decimals.show(low.value()) + " to " + amount(high, unit);
    }
    return (low.included() ? "at least " : "above ")
        + amount(low, unit)
        + (high.included() ? " and at most " : " and below ")
        + amount(high, unit);
  }

  private static String amount(Interval.End end, String unit) {
    return Decimals.show(end.value()) + " " + unit;
  }

  private static List<String> sides(Axis axis, BitSet cells) {
    List<String> words = new ArrayList<>();
    if (cells.intersects(axis.side(Side.BELOW))
        && cells.intersects(axis.side(Side.ABOVE))
        && !cells.intersects(axis.side(Side.WITHIN))) {
      words.add("outside limits");
    } else {
      for (Side side : Side.values()) {
        if (cells.intersects(axis.side(side))) {
          words.add(side.name().toLowerCase(Locale.ROOT) + " limits");
        }
      }
    }
    cells.stream()
        .mapToObj(axis.cells()::get)
        .forEach(
            cell -> {
              if (cell instanceof Cell.NoFigure) {
                words.add("no limits known");
              }
            });
    return words;
  }

  private List<RegionTest> equipment(Axis axis, BitSet cells) {
    List<Build> inside = builds(axis, cells);
    List<Build> all = builds(axis, occurring[0]);
    List<RegionTest> tests = new ArrayList<>();
    for (String attribute : knowledge.equipment().attributes()) {
      List<String> here = values(inside, attribute);
      boolean needed = !attribute.equals(Equipment.MODEL) && !here.equals(values(all, attribute));
      if (needed) {
        tests.add(new RegionTest(attribute, listed(here)));
      }
    }
    return isProduct(tests, inside, all) ? withoutRedundant(tests, inside, all) : named(inside);
  }

  /** Whether the tests pick exactly the builds inside. */
  private boolean isProduct(List<RegionTest> tests, List<Build> inside, List<Build> all) {
    return all.stream()
        .filter(build -> tests.stream().allMatch(test -> accepts(test, inside, build)))
        .toList()
        .equals(inside);
  }

  private boolean accepts(RegionTest test, List<Build> inside, Build build) {
    return build
        .attribute(test.reading())
        .map(value -> values(inside, test.reading()).contains(value))
        .orElse(true);
  }

  private List<RegionTest> withoutRedundant(
      List<RegionTest> tests, List<Build> inside, List<Build> all) {
    List<RegionTest> kept = new ArrayList<>(tests);
    for (RegionTest test : tests) {
      List<RegionTest> fewer = new ArrayList<>(kept);
      fewer.remove(test);
      if (isProduct(fewer, inside, all)) {
        kept.remove(test);
      }
    }
    return kept;
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

  /** Values in alphabetical order, software versions oldest first. */
  private static List<String> values(List<Build> builds, String attribute) {
    Comparator<String> order =
        attribute.equals(Equipment.SOFTWARE)
            ? Comparator.comparing(Version::new)
            : Comparator.naturalOrder();
    return builds.stream()
        .flatMap(build -> build.attribute(attribute).stream())
        .distinct()
        .sorted(order)
        .toList();
  }

  private static String listed(List<String> words) {
    return words.size() == 1 ? words.get(0) : "[" + String.join(", ", words) + "]";
  }
}
