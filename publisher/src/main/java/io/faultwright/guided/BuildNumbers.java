package io.faultwright.guided;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Equipment;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/** The published builds, each known by its number. */
final class BuildNumbers {
  private final List<Build> builds;
  private final SortedMap<Build, Integer> numbers = new TreeMap<>();

  BuildNumbers(Equipment equipment) {
    this.builds = equipment.builds();
    builds.forEach(build -> numbers.put(build, numbers.size()));
  }

  /** What the numbers mean, so that data of two editions are never taken together. */
  String seal() {
    return UUID.nameUUIDFromBytes(builds.toString().getBytes(StandardCharsets.UTF_8)).toString();
  }

  List<Build> all() {
    return builds;
  }

  List<Integer> of(Collection<Build> some) {
    return some.stream().map(numbers::get).sorted().toList();
  }

  /** Those for which a condition on equipment holds. */
  List<Integer> of(Condition applies) {
    return of(builds.stream().filter(build -> build.satisfies(applies)).toList());
  }

  /** As above; absent where they are all. */
  Optional<List<Integer>> unlessAll(Condition applies) {
    return Optional.of(of(applies)).filter(some -> some.size() < builds.size());
  }
}
