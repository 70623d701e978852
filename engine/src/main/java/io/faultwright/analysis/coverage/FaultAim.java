package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Goal;
import io.faultwright.model.Build;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The goal that a fault is concluded.
 *
 * @param goal what should be shown
 * @param rules for each rule that concludes it, the goal that it fires
 */
record FaultAim(Goal goal, List<SituationAim> rules) implements Aim {
  FaultAim {
    rules = List.copyOf(rules);
  }

  @Override
  public SortedSet<Build> possible() {
    SortedSet<Build> builds = new TreeSet<>();
    rules.forEach(rule -> builds.addAll(rule.possible()));
    return builds;
  }

  @Override
  public boolean isShownBy(Collection<Sighting> cases) {
    return rules.stream().anyMatch(rule -> rule.isShownBy(cases));
  }

  @Override
  public SortedSet<Build> alike(Sighting one) {
    SortedSet<Build> builds = new TreeSet<>();
    rules.stream()
        .filter(rule -> rule.shows().test(one))
        .forEach(rule -> builds.addAll(rule.alike(one)));
    return builds;
  }
}
