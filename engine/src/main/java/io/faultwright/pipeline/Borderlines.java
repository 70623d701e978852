package io.faultwright.pipeline;

import io.faultwright.analysis.tolerance.ToleranceBox;
import io.faultwright.compile.LimitsBook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.pipeline.Reachable.OnBuild;
import io.faultwright.pipeline.Reachable.Point;
import io.faultwright.run.Borderline;
import io.faultwright.run.Borderline.Near;
import io.faultwright.run.Borderline.Other;
import io.faultwright.run.Runner;
import io.faultwright.run.Status;
import io.faultwright.run.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells where another outcome is within what the instruments can tell, and what would decide. */
final class Borderlines {
  private final KnowledgeBase knowledge;
  private final Runner runner;
  private final LimitsBook limits;
  private final Reachable reachable;

  Borderlines(KnowledgeBase knowledge, Runner runner, LimitsBook limits) {
    this.knowledge = knowledge;
    this.runner = runner;
    this.limits = limits;
    this.reachable = new Reachable(knowledge, runner);
  }

  /**
   * What else a situation could come to.
   *
   * @param said what the rules say about it as it is given
   * @return empty where nothing else is within the tolerances
   */
  Optional<Borderline> of(String symptom, Situation given, Verdict said) {
    if (!said.status().runnable()) {
      return Optional.empty();
    }
    Optional<List<OnBuild>> builds = reachable.of(symptom, given);
    return builds.isEmpty()
        ? Optional.of(new Borderline.NotComputed())
        : found(symptom, given, builds.get());
  }

  private Optional<Borderline> found(String symptom, Situation given, List<OnBuild> builds) {
    Set<Verdict> said = new LinkedHashSet<>();
    builds.forEach(build -> said.add(build.said()));
    Doubts doubts = new Doubts(limits, knowledge, new ToleranceBox(knowledge, given));
    Map<Verdict, Doubts.Found> others = new LinkedHashMap<>();
    for (OnBuild build : builds) {
      for (Point point : build.points()) {
        if (!said.contains(point.verdict()) && canBeTrue(point.verdict())) {
          others.merge(point.verdict(), doubts.of(build, point), Doubts.Found::simpler);
        }
      }
    }
    return others.isEmpty() ? Optional.empty() : Optional.of(found(symptom, builds, others));
  }

  /** What cannot happen is not what is there. */
  private static boolean canBeTrue(Verdict verdict) {
    return verdict.status() != Status.TAKE_AGAIN;
  }

  private Borderline found(
      String symptom, List<OnBuild> builds, Map<Verdict, Doubts.Found> others) {
    Set<Near> near = new LinkedHashSet<>();
    List<Other> told = new ArrayList<>();
    List<Situation> rivals = new ArrayList<>();
    builds.forEach(build -> rivals.add(build.given()));
    others.forEach(
        (verdict, doubt) -> {
          near.addAll(doubt.near());
          told.add(new Other(verdict, doubt.example()));
          rivals.add(doubt.example());
        });
    Decider.Choice choice = new Decider(knowledge, runner, limits).choose(symptom, rivals);
    return new Borderline.Found(
        near.stream().sorted(Comparator.comparing(Near::reading).thenComparing(Near::at)).toList(),
        told,
        choice.reading(),
        choice.always());
  }
}
