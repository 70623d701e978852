package io.faultwright.analysis.change;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Random situations of two revisions, with the cells they lie in found from scratch. */
final class SharedPoints {
  private final KnowledgeBase shared;
  private final Space space;
  private final Random random;
  private final DerivedValues derived;

  SharedPoints(Space space, long seed) {
    this.shared = space.knowledge();
    this.space = space;
    this.derived = new DerivedValues(shared);
    this.random = new Random(seed);
  }

  /** Some situation; a value sits on a mark about half of the time. */
  Situation next() {
    List<Build> builds =
        space.axes().get(0).cells().stream()
            .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
            .toList();
    Build build = builds.get(random.nextInt(builds.size()));
    SortedMap<String, String> equipment = new TreeMap<>();
    equipment.put(Equipment.MODEL, build.model().id());
    build.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    SortedMap<String, Value> readings = new TreeMap<>();
    for (Reading reading : driversFirst()) {
      if (build.satisfies(reading.applies())) {
        readings.put(reading.id(), value(reading, build, readings));
      }
    }
    return new Situation(equipment, readings);
  }

  private List<Reading> driversFirst() {
    return shared.readings().values().stream()
        .filter(reading -> !SharedNames.isAid(reading.id()))
        .filter(reading -> reading.derived().isEmpty())
        .filter(reading -> space.position(new Axis.OfReading(reading.id())).isPresent())
        .sorted(Comparator.comparing(reading -> !reading.id().equals("driver")))
        .toList();
  }

  private Value value(Reading reading, Build build, SortedMap<String, Value> known) {
    boolean refusable = !axis(reading.id()).where(Cell.NotTaken.class::isInstance).isEmpty();
    if (refusable && random.nextInt(4) == 0) {
      return new Value.NotTaken();
    }
    return reading
        .domain()
        .match(
            measured -> new Value.Number(amount(reading.id(), measured, build, known)),
            choice -> new Value.Word(choice.ids().get(random.nextInt(choice.ids().size()))));
  }

  private Axis axis(String reading) {
    return space.axis(new Axis.OfReading(reading));
  }

  private BigFraction amount(
      String reading, Domain.Measured domain, Build build, SortedMap<String, Value> known) {
    TreeSet<BigFraction> marks = new TreeSet<>();
    BigFraction low = domain.range().low().orElseThrow().value();
    BigFraction high = domain.range().high().orElseThrow().value();
    for (Cell cell : axis(reading).cells()) {
      if (cell instanceof Cell.Stretch stretch) {
        marks.add(stretch.interval().low().orElseThrow().value());
        marks.add(stretch.interval().high().orElseThrow().value());
      }
    }
    for (String judged : List.of(reading, reading + SharedNames.NOW)) {
      Optional.ofNullable(shared.limits().get(judged))
          .flatMap(table -> band(table, build, known))
          .ifPresent(
              band -> {
                band.low().ifPresent(marks::add);
                band.high().ifPresent(marks::add);
              });
    }
    marks.removeIf(mark -> mark.compareTo(low) < 0 || mark.compareTo(high) > 0);
    List<BigFraction> sorted = new ArrayList<>(marks);
    int at = random.nextInt(sorted.size());
    return at + 1 == sorted.size() || random.nextBoolean()
        ? sorted.get(at)
        : sorted.get(at).add(sorted.get(at + 1)).divide(2);
  }

  private static Optional<Band> band(
      LimitsTable table, Build build, SortedMap<String, Value> known) {
    List<BigFraction> drivers =
        table.drivers().stream()
            .map(known::get)
            .filter(Value.Number.class::isInstance)
            .map(value -> ((Value.Number) value).amount())
            .toList();
    return Limits.of(table, build).at(drivers);
  }

  /** Whether a diagram holds a situation. */
  boolean holds(int diagram, Situation situation) {
    int rest = diagram;
    for (int axis = 0; axis < space.axes().size(); axis++) {
      rest = space.diagrams().child(rest, axis, cell(space.axes().get(axis), situation));
    }
    return rest == Diagrams.ALL;
  }

  private int cell(Axis axis, Situation situation) {
    Build build = build(situation);
    if (axis.subject() instanceof Axis.OfReading of) {
      return only(axis, ofReading(of.reading(), build, situation));
    }
    if (axis.subject() instanceof Axis.OfSide of) {
      return only(axis, ofSide(of.reading(), build, situation));
    }
    return only(axis, cell -> ((Cell.Builds) cell).builds().contains(build));
  }

  private Build build(Situation situation) {
    return shared.equipment().builds().stream()
        .filter(build -> build.model().id().equals(situation.equipment().get("model")))
        .filter(
            build ->
                build
                    .attribute("software")
                    .equals(Optional.ofNullable(situation.equipment().get("software"))))
        .findFirst()
        .orElseThrow();
  }

  private Predicate<Cell> ofReading(String name, Build build, Situation situation) {
    if (!build.satisfies(shared.readings().get(name).applies())) {
      return Cell.Absent.class::isInstance;
    }
    if (SharedNames.isAid(name)) {
      return cell -> cell instanceof Cell.Word || cell instanceof Cell.Stretch;
    }
    return taken(name, situation)
        .orElseThrow()
        .match(
            word -> cell -> cell instanceof Cell.Word w && w.value().equals(word.id()),
            number ->
                cell -> cell instanceof Cell.Stretch s && contains(s.interval(), number.amount()),
            () -> Cell.NotTaken.class::isInstance);
  }

  private static boolean contains(Interval interval, BigFraction amount) {
    return interval.contains(amount);
  }

  /** What was observed or follows; empty on equipment without the reading. */
  private Optional<Value> taken(String name, Situation situation) {
    String reading = name.replace(SharedNames.NOW, "");
    return build(situation).satisfies(shared.readings().get(reading).applies())
        ? Optional.ofNullable(derived.complete(situation).readings().get(reading))
        : Optional.empty();
  }

  private Predicate<Cell> ofSide(String name, Build build, Situation situation) {
    if (name.equals(SharedNames.NO_FIGURE)) {
      return Cell.NoFigure.class::isInstance;
    }
    LimitsTable table = shared.limits().get(name);
    List<Optional<Value>> values = new ArrayList<>();
    values.add(taken(name, situation));
    table.drivers().forEach(d -> values.add(taken(d, situation)));
    for (Optional<Value> value : values) {
      if (value.isEmpty()) {
        return Cell.Absent.class::isInstance;
      }
      if (value.get() instanceof Value.NotTaken) {
        return Cell.NotTaken.class::isInstance;
      }
    }
    BigFraction amount = ((Value.Number) values.get(0).get()).amount();
    return band(table, build, derived.complete(situation).readings())
        .<Predicate<Cell>>map(
            band -> cell -> cell instanceof Cell.SideOf at && at.side() == band.side(amount))
        .orElse(Cell.NoFigure.class::isInstance);
  }

  private static int only(Axis axis, Predicate<Cell> predicate) {
    int[] found = axis.where(predicate).stream().toArray();
    if (found.length != 1) {
      throw new AssertionError(axis + " has cells " + Arrays.toString(found) + " for one value");
    }
    return found[0];
  }
}
