package io.faultwright.analysis.quiz;

import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Equipment;
import io.faultwright.model.Situation;
import io.faultwright.model.Truth;
import io.faultwright.model.Version;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.NearMiss.Why;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;

/** Answers that would be right if one thing were different. */
final class NearFaults {
  /** So many conditions of a rule whose reading is not shown may be open in a near miss. */
  private static final int MOST_OPEN = 1;

  private final Ground ground;

  NearFaults(Ground ground) {
    this.ground = ground;
  }

  /**
   * The answers with what would have to be different: another version, another machine, or one
   * reading.
   *
   * @param shown a situation in which one answer is proved
   * @param needed ids of the readings that prove it
   */
  Map<Answer, NearMiss> of(Situation shown, List<String> needed, SortedSet<Answer> told) {
    Map<Answer, NearMiss> near = new LinkedHashMap<>();
    onOthers(shown, near);
    needed.forEach(reading -> without(shown, reading, near));
    near.keySet().removeAll(told);
    return near;
  }

  private void onOthers(Situation shown, Map<Answer, NearMiss> near) {
    String model = shown.equipment().get(Equipment.MODEL);
    for (boolean same : List.of(true, false)) {
      for (Build build : SymptomSpace.builds(ground.kb(), ground.symptom())) {
        if (build.model().id().equals(model) == same) {
          ground
              .proved(Ground.on(build, shown))
              .filter(result -> result.answers().size() == 1)
              .ifPresent(
                  result -> near.putIfAbsent(Ground.only(result), otherMachine(build, same)));
        }
      }
    }
  }

  private static NearMiss otherMachine(Build build, boolean sameModel) {
    return sameModel
        ? new NearMiss(Why.OTHER_SOFTWARE, build.software().map(Version::text).orElse(""))
        : new NearMiss(Why.OTHER_MODEL, build.model().id());
  }

  /** What could be told if a reading were another, and nearly is by the conditions of a rule. */
  private void without(Situation shown, String reading, Map<Answer, NearMiss> near) {
    int[] cells = ground.cells(shown);
    ground.touched(reading).forEach(axis -> cells[axis] = -1);
    int agreeing = ground.agreeing(cells);
    Observed observed = ground.observe(shown);
    for (Result result : ground.single()) {
      Answer answer = Ground.only(result);
      if (ground.diagrams().and(agreeing, result.situations()) != Diagrams.NONE
          && isNearly(answer, observed)) {
        near.putIfAbsent(answer, new NearMiss(Why.ONE_READING, reading));
      }
    }
  }

  /** Whether a rule for it misses one condition; a referral that comes first always misses one. */
  private boolean isNearly(Answer answer, Observed observed) {
    return ground.symptom().first().stream()
            .anyMatch(first -> answer.equals(new Answer.OfReferral(first.otherwise())))
        || ground.symptom().rules().values().stream()
            .filter(rule -> rule.conclusion().answers().contains(answer))
            .anyMatch(rule -> missesOne(rule.when(), observed));
  }

  private static boolean missesOne(Condition when, Observed observed) {
    List<Condition> parts = when instanceof Condition.All all ? all.parts() : List.of(when);
    long wrong = parts.stream().filter(part -> observed.met(part) == Truth.FALSE).count();
    long open = parts.stream().filter(part -> observed.met(part) == Truth.UNKNOWN).count();
    return wrong == 1 && open <= MOST_OPEN;
  }
}
