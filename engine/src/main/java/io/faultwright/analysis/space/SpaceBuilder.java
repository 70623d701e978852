package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
  private final KnowledgeBase knowledge;
  private final List<Build> builds;
  private final List<Condition.Test> counted;
  private final List<Condition.Test> tests;
  private final SortedSet<String> limited;
  private final SortedSet<String> readings;
  private final List<SortedSet<String>> groups;
  private final Map<String, Map<Build, LimitsCurve>> curves = new HashMap<>();

  SpaceBuilder(
      KnowledgeBase knowledge,
      List<Build> builds,
      List<Condition> counted,
      List<Condition> others) {
    this.knowledge = knowledge;
    this.builds = builds;
    this.counted = counted.stream().flatMap(Condition::tests).toList();
    this.tests =
        Stream.concat(counted.stream(), others.stream()).flatMap(Condition::tests).toList();
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
    List<Axis> axes = axes();
    Map<Axis.Subject, Integer> positions = new LinkedHashMap<>();
    axes.forEach(axis -> positions.put(axis.subject(), positions.size()));
    Diagrams diagrams = new Diagrams(axes.stream().mapToInt(axis -> axis.cells().size()).toArray());
    Space free = new Space(knowledge, axes, positions, curves, diagrams, Diagrams.ALL, List.of());
    List<Coupling> couplings = groups.stream().map(group -> new Coupling(free, group)).toList();
    int consistent = new Consistency(free, limited, couplings).diagram();
    return new Space(knowledge, axes, positions, curves, diagrams, consistent, couplings);
  }

  private List<Axis> axes() {
    Map<String, Axis> byReading = readingAxes();
    List<Axis> axes = new ArrayList<>();
    axes.add(equipment());
    for (String reading : inOrder()) {
      axes.add(byReading.get(reading));
      if (limited.contains(reading)) {
        axes.add(new AxisBuilder(knowledge, counted).sides(reading));
      }
    }
    return axes;
  }

  /** Builds that no test, no used table and no used reading tells apart share a cell. */
  private Axis equipment() {
    Map<String, List<Build>> classes = new LinkedHashMap<>();
    for (Build build : builds) {
      classes.computeIfAbsent(signature(build), key -> new ArrayList<>()).add(build);
    }
    List<Cell> cells = classes.values().stream().<Cell>map(Cell.Builds::new).toList();
    return AxisBuilder.ungrouped(new Axis.OfEquipment(), cells);
  }

  private String signature(Build build) {
    StringBuilder signature = new StringBuilder();
    tests.stream()
        .filter(test -> !knowledge.readings().containsKey(test.subject()))
        .forEach(test -> signature.append(build.satisfies(test) ? '1' : '0'));
    for (String reading : limited) {
      curves
          .get(reading)
          .get(build)
          .rows()
          .forEach(row -> signature.append(' ').append(table(reading).rows().indexOf(row)));
      signature.append(';');
    }
    readings.forEach(reading -> signature.append(exists(reading, build) ? '1' : '0'));
    return signature.toString();
  }

  private boolean exists(String reading, Build build) {
    return build.satisfies(knowledge.readings().get(reading).applies());
  }

  /** As {@link #byImportance}, but with readings that hang together next to each other. */
  private List<String> inOrder() {
    List<String> sorted = byImportance();
    return sorted.stream()
        .sorted(Comparator.comparing(reading -> firstOf(group(reading), sorted)))
        .toList();
  }

  private SortedSet<String> group(String reading) {
    return groups.stream()
        .filter(group -> group.contains(reading))
        .findFirst()
        .orElseGet(() -> new TreeSet<>(Set.of(reading)));
  }

  private static int firstOf(SortedSet<String> group, List<String> sorted) {
    return group.stream().mapToInt(sorted::indexOf).min().orElseThrow();
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
    AxisBuilder builder = new AxisBuilder(knowledge, counted);
    readings.stream()
        .sorted(Comparator.comparing((String reading) -> -depth(reading)))
        .forEach(reading -> axes.put(reading, axis(builder, reading, axes)));
    return axes;
  }

  private Axis axis(AxisBuilder builder, String reading, Map<String, Axis> done) {
    Reading definition = knowledge.readings().get(reading);
    List<Cell> special = special(definition);
    return definition
        .domain()
        .match(
            measured -> {
              SortedSet<Cut> cuts = new TreeSet<>(builder.cuts(reading, tests));
              cuts.addAll(cutsForFollowers(reading, done));
              return builder.measured(definition, measured, cuts, special);
            },
            choice -> builder.choice(definition, choice, special));
  }

  private List<Cell> special(Reading reading) {
    List<Cell> special = new ArrayList<>();
    SortedSet<String> sources = CoupledReadings.withOperands(knowledge, Set.of(reading.id()));
    boolean refusable =
        tests.stream()
            .anyMatch(
                test ->
                    sources.contains(test.subject()) && test.pattern() instanceof CannotBeTaken);
    if (refusable) {
      special.add(new Cell.NotTaken());
    }
    if (!builds.stream().allMatch(build -> exists(reading.id(), build))) {
      special.add(new Cell.Absent());
    }
    return special;
  }

  private Set<Cut> cutsForFollowers(String driver, Map<String, Axis> done) {
    SortedSet<Cut> cuts = new TreeSet<>();
    for (String follower : limited) {
      if (table(follower).drivers().contains(driver)) {
        SortedSet<BigFraction> marks = AxisBuilder.marks(done.get(follower));
        curves.get(follower).values().forEach(curve -> cuts.addAll(curve.cuts(marks)));
      }
    }
    return cuts;
  }
}
