package io.faultwright.flow;

import io.faultwright.flow.Course.Arm;
import io.faultwright.flow.Course.Step;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Target;
import io.faultwright.model.Condition.AgainstLimits;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Makes the course of a chart that a trainer wrote. */
final class AuthoredCourse {
  private final Chart chart;
  private final OutcomeWords outcomes;
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, Integer> positions = new HashMap<>();

  private AuthoredCourse(Chart chart, OutcomeWords outcomes) {
    this.chart = chart;
    this.outcomes = outcomes;
  }

  /** The course of a chart that leads nowhere back. */
  static Course of(Chart chart, OutcomeWords outcomes) {
    AuthoredCourse course = new AuthoredCourse(chart, outcomes);
    int start = course.step(chart.start());
    return new Course(course.steps, start);
  }

  private int step(String id) {
    Integer known = positions.get(id);
    if (known == null) {
      known = add(ask(chart.steps().get(id)));
      positions.put(id, known);
    }
    return known;
  }

  private Course.Ask ask(Chart.Step step) {
    boolean limits =
        step.branches().stream()
            .flatMap(branch -> branch.when().tests())
            .anyMatch(test -> test.pattern() instanceof AgainstLimits);
    List<Arm> arms =
        step.branches().stream()
            .map(
                branch ->
                    new Arm(List.of(new Course.Meets(branch.when())), target(branch.target())))
            .toList();
    return new Course.Ask(AuthoredDrawing.node(step), step.check(), limits, arms);
  }

  private int target(Target target) {
    return target.match(
        next -> step(next.step()),
        end -> add(new Course.End(outcomes.id(end.answers()), end.answers())));
  }

  private int add(Step step) {
    steps.add(step);
    return steps.size() - 1;
  }
}
