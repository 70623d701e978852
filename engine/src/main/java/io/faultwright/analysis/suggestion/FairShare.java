package io.faultwright.analysis.suggestion;

import io.faultwright.analysis.coverage.AimSpace;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Build;
import io.faultwright.model.Situation;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Picks a situation on the equipment that the fewest cases are about. */
final class FairShare {
  private final Map<Build, Integer> cases = new HashMap<>();

  /** Counts a case that may be about any of these. */
  void count(Collection<Build> builds) {
    builds.forEach(build -> cases.merge(build, 1, Integer::sum));
  }

  /**
   * A situation of a diagram that is not empty, on a build that nothing in question tells apart
   * from its own.
   */
  Situation pick(AimSpace space, int where) {
    List<Build> builds =
        space.builds(where).stream()
            .sorted(
                Comparator.comparingInt((Build build) -> cases.getOrDefault(build, 0))
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
    Optional<Build> first = builds.stream().findFirst();
    int on = first.map(build -> space.on(where, List.of(build))).orElse(Diagrams.NONE);
    Situation found = new Witness(space.space()).of(on == Diagrams.NONE ? where : on);
    return first.map(build -> new Situation(build.facts(), found.readings())).orElse(found);
  }
}
