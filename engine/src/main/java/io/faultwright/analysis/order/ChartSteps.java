package io.faultwright.analysis.order;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.model.Access;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.Chart.Target;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The steps of an authored chart: what has to be read for each, and where its answers lead. */
final class ChartSteps {
  private final Space space;
  private final Diagrams diagrams;
  private final List<Question> questions = new ArrayList<>();
  private final Map<String, List<Integer>> read = new HashMap<>();
  private final Map<String, List<Line>> lines = new HashMap<>();

  ChartSteps(Space space, Chart chart) {
    this.space = space;
    this.diagrams = space.diagrams();
    chart.steps().values().forEach(this::add);
  }

  /**
   * Answers that lead to the same.
   *
   * @param where the situations that give one of them
   */
  record Line(Target target, int where) {}

  private void add(Step step) {
    List<Integer> positions = new ArrayList<>();
    for (Axis.Subject subject : subjects(step)) {
      space
          .position(subject)
          .ifPresent(
              axis -> {
                positions.add(questions.size());
                questions.add(question(step.check(), axis, subject instanceof Axis.OfSide));
              });
    }
    read.put(step.id(), positions);
    lines.put(step.id(), lines(step));
  }

  private static Question question(String check, int axis, boolean limits) {
    return new Question(check, limits, false, axis, List.of(), Access.OUTSIDE, BigFraction.ZERO);
  }

  /** The reading itself, its place against the limits, or both; nothing for a fact. */
  private List<Axis.Subject> subjects(Step step) {
    if (!space.knowledge().readings().containsKey(step.check())) {
      return List.of();
    }
    boolean limits = tests(step).anyMatch(test -> test.pattern() instanceof AgainstLimits);
    boolean value =
        tests(step)
            .anyMatch(
                test ->
                    !(test.pattern() instanceof AgainstLimits)
                        && !(test.pattern() instanceof CannotBeTaken));
    List<Axis.Subject> subjects = new ArrayList<>();
    if (limits) {
      subjects.add(new Axis.OfSide(step.check()));
    }
    if (value || !limits) {
      subjects.add(new Axis.OfReading(step.check()));
    }
    return subjects;
  }

  private static Stream<Condition.Test> tests(Step step) {
    return step.branches().stream().map(Branch::when).flatMap(Condition::tests);
  }

  /** One for each target, in an order that does not depend on how they are written. */
  private List<Line> lines(Step step) {
    SortedMap<String, Line> lines = new TreeMap<>();
    for (Branch branch : step.branches()) {
      String key = branch.target().match(next -> "1 " + next.step(), end -> "2 " + end.answers());
      Line line = new Line(branch.target(), space.truth(branch.when()).isTrue());
      lines.merge(key, line, (a, b) -> new Line(a.target, diagrams.or(a.where, b.where)));
    }
    return List.copyOf(lines.values());
  }

  /** Everything that the steps ask of readings. */
  List<Question> questions() {
    return List.copyOf(questions);
  }

  /** Positions, among the questions, of what a step asks; none where it asks for a fact. */
  List<Integer> read(String step) {
    return read.get(step);
  }

  List<Line> lines(String step) {
    return lines.get(step);
  }
}
