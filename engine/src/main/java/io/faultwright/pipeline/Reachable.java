package io.faultwright.pipeline;

import io.faultwright.analysis.tolerance.Outlook;
import io.faultwright.analysis.tolerance.ToleranceBox;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Every outcome that a situation can have while each reading lies within its tolerance: the
 * analysis finds the points, Drools judges them. Where the build is not fully known, the outcomes
 * of all builds it can be.
 */
final class Reachable {
  private final KnowledgeBase knowledge;
  private final Runner runner;
  private final Map<String, Scope> scopes = new ConcurrentHashMap<>();

  Reachable(KnowledgeBase knowledge, Runner runner) {
    this.knowledge = knowledge;
    this.runner = runner;
  }

  /** What is worked out once for a symptom. */
  private record Scope(BuildClasses builds, Outlook outlook) {}

  /**
   * A situation judged on one build.
   *
   * @param build the build
   * @param given what is given, on this build
   * @param said the outcome of that
   * @param open the tests that may come out in more than one way
   * @param points situations within the tolerances with their outcomes, one at least for each way
   *     in which the tests can come out; empty where nothing is open
   */
  record OnBuild(Build build, Situation given, Verdict said, List<Test> open, List<Point> points) {}

  /** A situation and its outcome. */
  record Point(Situation situation, Verdict verdict) {}

  /**
   * The outcomes on each kind of build.
   *
   * @return empty where there are too many combinations; an empty list where no test is open
   */
  Optional<List<OnBuild>> of(String symptom, Situation given) {
    Scope scope = scopes.computeIfAbsent(symptom, this::scope);
    ToleranceBox box = new ToleranceBox(knowledge, given);
    List<Build> builds = scope.builds().having(given.equipment());
    List<List<Test>> open = builds.stream().map(build -> scope.outlook().open(box, build)).toList();
    List<OnBuild> all = new ArrayList<>();
    if (open.stream().allMatch(List::isEmpty)) {
      return Optional.of(all);
    }
    for (int i = 0; i < builds.size(); i++) {
      Situation here = builds.size() == 1 ? given : on(builds.get(i), given);
      Optional<List<Situation>> points =
          open.get(i).isEmpty()
              ? Optional.of(List.of())
              : scope.outlook().points(here, box, builds.get(i), open.get(i));
      if (points.isEmpty()) {
        return Optional.empty();
      }
      all.add(judged(symptom, builds.get(i), here, open.get(i), points.get()));
    }
    return Optional.of(all);
  }

  private OnBuild judged(
      String symptom, Build build, Situation given, List<Test> open, List<Situation> points) {
    return new OnBuild(
        build,
        given,
        runner.verdict(symptom, given),
        open,
        points.stream().map(at -> new Point(at, runner.verdict(symptom, at))).toList());
  }

  private Scope scope(String id) {
    Symptom symptom = knowledge.symptoms().get(id);
    return new Scope(new BuildClasses(knowledge, symptom), new Outlook(knowledge, symptom));
  }

  private static Situation on(Build build, Situation given) {
    SortedMap<String, String> equipment = new TreeMap<>(given.equipment());
    equipment.put(Equipment.MODEL, build.model().id());
    build.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    return new Situation(equipment, given.readings());
  }
}
