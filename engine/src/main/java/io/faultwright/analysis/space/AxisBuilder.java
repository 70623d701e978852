package io.faultwright.analysis.space;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Makes the axes of readings and of their limits. */
final class AxisBuilder {
  private final KnowledgeBase knowledge;
  private final Map<String, List<Condition.Test>> counted;

  /**
   * @param counted the tests whose classes make situations distinguishable
   */
  AxisBuilder(KnowledgeBase knowledge, List<Condition.Test> counted) {
    this.knowledge = knowledge;
    this.counted = counted.stream().collect(Collectors.groupingBy(Condition.Test::subject));
  }

  static Axis ungrouped(Axis.Subject subject, List<Cell> cells) {
    return new Axis(subject, cells, IntStream.range(0, cells.size()).boxed().toList());
  }

  private static Axis allAlike(Axis.Subject subject, List<Cell> cells) {
    return new Axis(subject, cells, cells.stream().map(cell -> 0).toList());
  }

  /** The cuts that tests on one reading's value make. */
  static SortedSet<Cut> cuts(List<Condition.Test> tests) {
    return tests.stream()
        .map(Condition.Test::pattern)
        .filter(InInterval.class::isInstance)
        .flatMap(pattern -> Cut.of(((InInterval) pattern).interval()).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  Axis measured(Reading reading, Domain.Measured domain, SortedSet<Cut> cuts, List<Cell> special) {
    List<Interval> pieces = Cut.pieces(domain.range(), cuts);
    List<Interval> coarse = Cut.pieces(domain.range(), cuts(about(reading.id())));
    List<Cell> cells = new ArrayList<>(pieces.stream().<Cell>map(Cell.Stretch::new).toList());
    List<Integer> groups = new ArrayList<>();
    int group = 0;
    for (Interval piece : pieces) {
      boolean later = Cut.start(piece).compareTo(Cut.end(coarse.get(group))) >= 0;
      group += later ? 1 : 0;
      groups.add(group);
    }
    special.forEach(cell -> groups.add(coarse.size() + special.indexOf(cell)));
    cells.addAll(special);
    Axis.Subject subject = new Axis.OfReading(reading.id());
    return isCounted(reading.id()) ? new Axis(subject, cells, groups) : allAlike(subject, cells);
  }

  Axis choice(Reading reading, Domain.Choice domain, List<Cell> special) {
    List<Cell> cells =
        Stream.concat(domain.ids().stream().map(Cell.Word::new), special.stream()).toList();
    Axis.Subject subject = new Axis.OfReading(reading.id());
    return isCounted(reading.id()) ? ungrouped(subject, cells) : allAlike(subject, cells);
  }

  Axis sides(String reading) {
    List<Cell> cells =
        new ArrayList<>(Arrays.stream(Side.values()).<Cell>map(Cell.SideOf::new).toList());
    cells.addAll(List.of(new Cell.NotTaken(), new Cell.Absent(), new Cell.NoFigure()));
    Axis.Subject subject = new Axis.OfSide(reading);
    boolean judged =
        about(reading).stream().anyMatch(test -> test.pattern() instanceof AgainstLimits);
    return judged ? ungrouped(subject, cells) : allAlike(subject, cells);
  }

  private List<Condition.Test> about(String reading) {
    return counted.getOrDefault(reading, List.of());
  }

  private boolean isCounted(String reading) {
    return counted.containsKey(reading);
  }

  /** Values at which the pieces of a quantity's axis end. */
  static SortedSet<BigFraction> marks(Axis axis) {
    SortedSet<BigFraction> marks = new TreeSet<>();
    for (Cell cell : axis.cells()) {
      if (cell instanceof Cell.Stretch stretch) {
        marks.add(stretch.interval().low().orElseThrow().value());
        marks.add(stretch.interval().high().orElseThrow().value());
      }
    }
    return marks;
  }
}
