package io.faultwright.compile;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Truth;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The builds a machine can be, as far as its equipment is known.
 *
 * @param builds at least one
 */
public record Candidates(List<Build> builds) {
  public Candidates {
    builds = List.copyOf(builds);
  }

  /** Those of the builds that have every given equipment fact. */
  public static List<Build> having(Map<String, String> equipment, Collection<Build> builds) {
    return builds.stream().filter(build -> has(build, equipment)).toList();
  }

  private static boolean has(Build build, Map<String, String> equipment) {
    return equipment.entrySet().stream()
        .allMatch(
            fact -> build.attribute(fact.getKey()).filter(fact.getValue()::equals).isPresent());
  }

  /** What all builds agree on; unknown where they differ. */
  Truth agree(Function<Build, Truth> statement) {
    Truth first = statement.apply(builds.get(0));
    for (int i = 1; i < builds.size(); i++) {
      if (statement.apply(builds.get(i)) != first) {
        return Truth.UNKNOWN;
      }
    }
    return first;
  }

  /** Whether a condition on equipment holds for at least one of the builds. */
  boolean some(Condition condition) {
    return builds.stream().anyMatch(build -> build.satisfies(condition));
  }

  /** The values the builds have for an equipment fact. */
  public SortedSet<String> values(String attribute) {
    return builds.stream()
        .flatMap(build -> build.attribute(attribute).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Whether the builds do not all have the same value for an equipment fact. */
  public boolean differIn(String attribute) {
    Stream<Object> values = builds.stream().map(build -> build.attribute(attribute));
    return values.distinct().count() > 1;
  }
}
