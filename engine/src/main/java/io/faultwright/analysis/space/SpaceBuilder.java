package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the axes of a space and which cell combinations are real.
 *
 * <p>Where limits follow another reading (the driver), the driver's axis is cut finely enough that
 * within one of its cells it never matters where exactly the driver lies: at the ends and steps of
 * the table, and where a limit passes a mark of the limited reading. Readings that share a driver
 * are then independent of each other, and the space stays exact.
 */
final class SpaceBuilder {
  /** From so many conditions on, the order of the axes decides how large the diagrams get. */
  private static final int MANY = 48;

  private final KnowledgeBase knowledge;
  private final List<Build> builds;
  private final List<Condition> conditions;
  private final Deadline deadline;
  private final List<Condition.Test> counted;
  private final List<Condition.Test> tests;
  private final Map<String, List<Condition.Test>> testsOf;
  private final AxisBuilder builder;
  private final SortedSet<String> limited;
  private final SortedSet<String> readings;
  private final List<CoupledReadings.Group> groups;
  private final SortedMap<String, SortedSet<Cut>> separating = new TreeMap<>();
  private final Map<String, Map<Build, LimitsCurve>> curves = new HashMap<>();

  SpaceBuilder(
      KnowledgeBase knowledge,
      List<Build> builds,
      List<Condition> counted,
      List<Condition> others,
      Deadline deadline) {
    this.knowledge = knowledge;
    this.builds = builds;
    this.conditions = counted;
    this.deadline = deadline;
    this.counted = counted.stream().flatMap(Condition::tests).toList();
    this.tests =
        Stream.concat(counted.stream(), others.stream()).flatMap(Condition::tests).toList();
    this.testsOf = tests.stream().collect(Collectors.groupingBy(Condition.Test::subject));
    this.builder = new AxisBuilder(knowledge, this.counted);
    this.limited = judgedAgainstLimits(tests);
    SortedSet<String> asked = new TreeSet<>(limited);
    tests.stream()
        .map(Condition.Test::subject)
        .filter(knowledge.readings()::containsKey)
        .forEach(asked::add);
    limited.forEach(reading -> asked.addAll(table(reading).drivers()));
    this.readings = CoupledReadings.withOperands(knowledge, asked);
    this.groups = CoupledReadings.groups(knowledge, readings, limited);
  }

  private static SortedSet<String> judgedAgainstLimits(List<Condition.Test> tests) {
    return tests.stream()
        .filter(test -> test.pattern() instanceof AgainstLimits)
        .map(Condition.Test::subject)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private LimitsTable table(String reading) {
    return knowledge.limits().get(reading);
  }

  Space build() {
    for (String reading : limited) {
      Map<Build, LimitsCurve> byBuild = new LinkedHashMap<>();
      builds.forEach(build -> byBuild.put(build, LimitsCurve.of(table(reading), build)));
      curves.put(reading, byBuild);
    }
    Space draft = free();
    if (groups.stream().anyMatch(group -> group.separator().isPresent())) {
      separating.putAll(new Consistency(draft, limited, couplings(draft)).separatingCuts());
    }
    Space free = separating.isEmpty() ? draft : free();
    List<Coupling> couplings = couplings(free);
    int consistent = new Consistency(free, limited, couplings).diagram();
    return new Space(
        knowledge,
        free.axes(),
        positions(free.axes()),
        curves,
        free.diagrams(),
        consistent,
        couplings);
  }

  /** The axes as they are cut by now, without saying which cells go together. */
  private Space free() {
    List<Axis> axes = axes();
    int[] sizes = axes.stream().mapToInt(axis -> axis.cells().size()).toArray();
    Diagrams diagrams = new Diagrams(sizes, deadline);
    return new Space(knowledge, axes, positions(axes), curves, diagrams, Diagrams.ALL, List.of());
  }

  private static Map<Axis.Subject, Integer> positions(List<Axis> axes) {
    Map<Axis.Subject, Integer> positions = new LinkedHashMap<>();
    axes.forEach(axis -> positions.put(axis.subject(), positions.size()));
    return positions;
  }

  private List<Coupling> couplings(Space space) {
    return groups.stream().map(group -> new Coupling(space, group)).toList();
  }

  private List<Axis> axes() {
    Map<String, Axis> byReading = readingAxes();
    List<Axis> axes = new ArrayList<>();
    axes.add(equipment());
    for (String reading : inOrder()) {
      axes.add(byReading.get(reading));
      if (limited.contains(reading)) {
        axes.add(builder.sides(reading));
      }
    }
    return axes;
  }

  /** Builds that no test, no used table and no used reading tells apart share a cell. */
  private Axis equipment() {
    Map<String, List<Build>> classes = new LinkedHashMap<>();
    List<Condition.Test> facts =
        tests.stream().filter(test -> !knowledge.readings().containsKey(test.subject())).toList();
    for (Build build : builds) {
      classes.computeIfAbsent(signature(build, facts), key -> new ArrayList<>()).add(build);
    }
    List<Cell> cells = classes.values().stream().<Cell>map(Cell.Builds::new).toList();
    return AxisBuilder.ungrouped(new Axis.OfEquipment(), cells);
  }

  private String signature(Build build, List<Condition.Test> facts) {
    StringBuilder signature = new StringBuilder();
    facts.forEach(test -> signature.append(build.satisfies(test)));
    for (String reading : limited) {
      curves
          .get(reading)
          .get(build)
          .rows()
          .forEach(row -> signature.append(' ').append(table(reading).rows().indexOf(row)));
      signature.append(';');
    }
    readings.forEach(reading -> signature.append(exists(reading, build)));
    if (readings.stream().anyMatch(this::needsRefrigerant)) {
      signature.append(build.model().refrigerant());
    }
    return signature.toString();
  }

  private boolean needsRefrigerant(String reading) {
    return knowledge
        .readings()
        .get(reading)
        .derived()
        .filter(Derived::needsRefrigerant)
        .isPresent();
  }

  private boolean exists(String reading, Build build) {
    return build.satisfies(knowledge.readings().get(reading).applies());
  }

  /** As {@link #byImportance}, but with readings that hang together next to each other. */
  private List<String> inOrder() {
    List<String> sorted = nearEachOther(byImportance());
    return sorted.stream()
        .sorted(Comparator.comparing(reading -> firstWith(reading, sorted)))
        .toList();
  }

  /** The first of the readings that stand together with this one, or follow it as a separator. */
  private int firstWith(String reading, List<String> sorted) {
    return groups.stream()
        .filter(group -> group.readings().contains(reading))
        .flatMap(group -> group.core().stream())
        .mapToInt(sorted::indexOf)
        .reduce(sorted.indexOf(reading), Math::min);
  }

  /** Drivers before what follows them, then the most asked first, then by id. */
  private List<String> byImportance() {
    Map<String, Long> asked =
        tests.stream()
            .collect(Collectors.groupingBy(Condition.Test::subject, Collectors.counting()));
    return readings.stream()
        .sorted(
            Comparator.comparing((String reading) -> drives(reading) ? depth(reading) : 1_000)
                .thenComparing(reading -> -asked.getOrDefault(reading, 0L))
                .thenComparing(Comparator.naturalOrder()))
        .toList();
  }

  /**
   * Where many rules overlap, readings that are asked together stand together. Elsewhere the order
   * of importance makes for the more telling witness.
   */
  private List<String> nearEachOther(List<String> sorted) {
    if (conditions.size() < MANY) {
      return sorted;
    }
    List<String> leading = sorted.stream().filter(this::drives).toList();
    List<String> others = sorted.stream().filter(reading -> !drives(reading)).toList();
    int step = conditions.size() / MANY;
    List<Set<String>> together =
        IntStream.iterate(0, i -> i < conditions.size(), i -> i + step)
            .mapToObj(i -> subjects(conditions.get(i), others))
            .filter(group -> group.size() > 1)
            .toList();
    return Stream.concat(leading.stream(), new AxisOrder(others, together).best().stream())
        .toList();
  }

  private static Set<String> subjects(Condition condition, List<String> readings) {
    return condition
        .tests()
        .map(Condition.Test::subject)
        .filter(readings::contains)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private boolean drives(String reading) {
    return limited.stream().anyMatch(other -> table(other).drivers().contains(reading));
  }

  /** How many drivers stand above a reading. */
  private int depth(String reading) {
    return limited.contains(reading)
        ? table(reading).drivers().stream().mapToInt(this::depth).map(d -> d + 1).max().orElse(0)
        : 0;
  }

  /** Axes of the readings; those that follow a driver first, since they cut the driver's axis. */
  private Map<String, Axis> readingAxes() {
    Map<String, Axis> axes = new HashMap<>();
    readings.stream()
        .sorted(Comparator.comparing((String reading) -> -depth(reading)))
        .forEach(reading -> axes.put(reading, axis(reading, axes)));
    return axes;
  }

  private Axis axis(String reading, Map<String, Axis> done) {
    Reading definition = knowledge.readings().get(reading);
    List<Cell> special = special(definition);
    return definition
        .domain()
        .match(
            measured -> {
              SortedSet<Cut> cuts =
                  new TreeSet<>(AxisBuilder.cuts(testsOf.getOrDefault(reading, List.of())));
              cuts.addAll(cutsForFollowers(reading, done));
              cuts.addAll(separating.getOrDefault(reading, Collections.emptySortedSet()));
              return builder.measured(definition, measured, cuts, special);
            },
            choice -> builder.choice(definition, choice, special));
  }

  private List<Cell> special(Reading reading) {
    List<Cell> special = new ArrayList<>();
    SortedSet<String> sources = CoupledReadings.withOperands(knowledge, Set.of(reading.id()));
    boolean refusable =
        sources.stream()
            .flatMap(source -> testsOf.getOrDefault(source, List.of()).stream())
            .anyMatch(test -> test.pattern() instanceof CannotBeTaken);
    if (refusable || sources.stream().anyMatch(one -> mayLeaveCurves(knowledge, builds, one))) {
      special.add(new Cell.NotTaken());
    }
    if (!builds.stream().allMatch(build -> exists(reading.id(), build))) {
      special.add(new Cell.Absent());
    }
    return special;
  }

  /** Whether a reading is computed with a curve that ends within the ranges of what it takes. */
  static boolean mayLeaveCurves(KnowledgeBase knowledge, List<Build> builds, String reading) {
    Function<String, Interval> ranges =
        id -> ((Domain.Measured) knowledge.readings().get(id).domain()).range();
    return knowledge.readings().get(reading).derived().stream()
        .anyMatch(
            form ->
                builds.stream()
                    .map(build -> build.model().refrigerant())
                    .distinct()
                    .anyMatch(refrigerant -> form.mayLeaveCurves(ranges, refrigerant)));
  }

  private Set<Cut> cutsForFollowers(String driver, Map<String, Axis> done) {
    SortedSet<Cut> cuts = new TreeSet<>();
    for (String follower : limited) {
      if (table(follower).drivers().contains(driver)) {
        SortedSet<BigFraction> marks = AxisBuilder.marks(done.get(follower));
        int number = table(follower).drivers().indexOf(driver);
        curves.get(follower).values().forEach(curve -> cuts.addAll(curve.cuts(number, marks)));
      }
    }
    return cuts;
  }
}
