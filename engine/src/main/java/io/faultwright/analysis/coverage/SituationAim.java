package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Goal;
import io.faultwright.model.Build;
import io.faultwright.model.Sorted;
import java.util.Collection;
import java.util.SortedSet;
import java.util.function.Predicate;

/**
 * A goal that a single case reaches.
 *
 * @param goal what should be shown
 * @param space in which it is asked
 * @param where the situations that show it, in that space; at least one
 * @param possible the builds of those situations
 * @param shows whether a case shows it
 */
public record SituationAim(
    Goal goal, AimSpace space, int where, SortedSet<Build> possible, Predicate<Sighting> shows)
    implements Aim {
  public SituationAim {
    possible = Sorted.set(possible);
  }

  static SituationAim of(Goal goal, AimSpace space, int where, Predicate<Sighting> shows) {
    return new SituationAim(goal, space, where, space.builds(where), shows);
  }

  @Override
  public boolean isShownBy(Collection<Sighting> cases) {
    return cases.stream().anyMatch(shows);
  }

  @Override
  public SortedSet<Build> alike(Sighting one) {
    return space.alike(one.observed().builds());
  }
}
