package io.faultwright.adequacy;

import io.faultwright.model.Build;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the cases of a symptom cover.
 *
 * @param symptom id of the symptom
 * @param title of the symptom
 * @param cases how many cases were counted
 * @param goals every goal, criterion by criterion
 */
public record Coverage(String symptom, String title, int cases, List<GoalStatus> goals) {
  public Coverage {
    goals = List.copyOf(goals);
  }

  /** With goals that were found elsewhere, after those it has. */
  public Coverage with(List<GoalStatus> more) {
    return new Coverage(
        symptom, title, cases, Stream.concat(goals.stream(), more.stream()).toList());
  }

  /** For every criterion that has goals, how many are shown. */
  public Map<Criterion, Tally> tallies() {
    Map<Criterion, Tally> tallies = new EnumMap<>(Criterion.class);
    goals.forEach(
        goal ->
            tallies.merge(
                goal.goal().criterion(), new Tally(goal.shown() ? 1 : 0, 1), Tally::plus));
    return tallies;
  }

  /** What no case shows. */
  public Stream<GoalStatus> open() {
    return goals.stream().filter(goal -> !goal.shown());
  }

  /** How many of the goals that a build can show, by any criterion, its cases do. */
  public Tally on(Build build) {
    int of = 0;
    int shown = 0;
    for (GoalStatus goal : goals) {
      of += goal.possible().contains(build) ? 1 : 0;
      shown += goal.shownOn().contains(build) ? 1 : 0;
    }
    return new Tally(shown, of);
  }
}
