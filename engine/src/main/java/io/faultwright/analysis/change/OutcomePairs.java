package io.faultwright.analysis.change;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.change.Outcome;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Never;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * A symptom over the situations of both revisions: for each side the situations of every outcome.
 *
 * @param space the situations
 * @param before those of each outcome in the old revision
 * @param after those of each outcome in the new revision
 */
record OutcomePairs(
    Space space, SortedMap<Outcome, Integer> before, SortedMap<Outcome, Integer> after) {
  /**
   * The outcomes of both sides.
   *
   * @param builds the equipment on which one side at least offers the symptom; at least one
   */
  static OutcomePairs of(
      Joined joined, List<Build> builds, SymptomScope before, SymptomScope after) {
    Draft old = new Draft(joined, before);
    Draft current = new Draft(joined, after);
    List<Condition> conditions = new ArrayList<>(old.conditions);
    conditions.addAll(current.conditions);
    List<Condition> counted =
        conditions.stream()
            .flatMap(Condition::tests)
            .filter(test -> !SharedNames.isAid(test.subject()))
            .<Condition>map(test -> test)
            .toList();
    List<Condition> others = new ArrayList<>(conditions);
    old.nevers.forEach(never -> others.add(never.when()));
    current.nevers.forEach(never -> others.add(never.when()));
    Space space = Space.of(joined.knowledge(), builds, counted, others);
    return new OutcomePairs(space, old.outcomes(space), current.outcomes(space));
  }

  /** Situations that belong to the symptom in one revision at least. */
  int belonging() {
    return space.diagrams().or(belonging(before), belonging(after));
  }

  private int belonging(SortedMap<Outcome, Integer> outcomes) {
    return outcomes.entrySet().stream()
        .filter(outcome -> outcome.getKey().kind().belongs())
        .map(Map.Entry::getValue)
        .reduce(Diagrams.NONE, space.diagrams()::or);
  }

  /** What one side says, over the shared situations. */
  private static final class Draft {
    private final SymptomScope scope;
    private final Translation translation;
    private final List<Condition> conditions;
    private final List<Never> nevers = new ArrayList<>();

    Draft(Joined joined, SymptomScope scope) {
      this.scope = scope;
      this.translation = new Translation(joined, scope.side());
      this.conditions =
          SymptomScope.conditions(scope.symptom()).stream().map(translation::condition).toList();
      scope.nevers().forEach(never -> nevers.add(translation.never(never)));
      scope.asked().forEach(reading -> translation.outOfRange(reading).ifPresent(nevers::add));
    }

    SortedMap<Outcome, Integer> outcomes(Space space) {
      List<Build> builds = scope.side().satisfying(scope.symptom().applies());
      int offered = space.truth(BuildConditions.of(builds)).isTrue();
      int real = space.diagrams().and(space.consistent(), offered);
      SymptomSpace rules =
          SymptomSpace.within(space, translation.symptom(scope.symptom()), nevers, real);
      Condition recognise = translation.condition(scope.symptom().recognise());
      return OutcomeSets.of(space, offered, space.truth(recognise), rules);
    }
  }
}
