package io.faultwright.analysis.chart;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The situations that a chart has to bring to an end: the possible ones of its symptom on its
 * equipment. What only the chart asks about cuts them finer. That a reading cannot be taken counts
 * where the symptom speaks of it, not where the chart alone does.
 */
final class ChartSpace {
  private final Chart chart;
  private final SymptomSpace symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final int scope;
  private final int undecided;

  ChartSpace(KnowledgeBase knowledge, Chart chart, Deadline deadline) {
    this(
        chart,
        SymptomSpace.of(
            knowledge, knowledge.symptoms().get(chart.symptom()), conditions(chart), deadline));
  }

  /** On some equipment only. */
  static ChartSpace on(List<Build> builds, KnowledgeBase knowledge, Chart chart) {
    Symptom worked = knowledge.symptoms().get(chart.symptom());
    return new ChartSpace(
        chart, SymptomSpace.of(knowledge, worked, builds, conditions(chart), Deadline.NEVER));
  }

  private ChartSpace(Chart chart, SymptomSpace symptom) {
    this.chart = chart;
    this.symptom = symptom;
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    int offered = diagrams.and(symptom.possible(), space.truth(chart.applies()).isTrue());
    this.scope = diagrams.minus(offered, onlyHereNotTaken());
    this.undecided = diagrams.and(scope, new MissingLimits(symptom).undecided());
  }

  private static List<Condition> conditions(Chart chart) {
    List<Condition> conditions = new ArrayList<>();
    conditions.add(chart.applies());
    chart.steps().values().stream()
        .flatMap(step -> step.branches().stream())
        .map(Branch::when)
        .forEach(conditions::add);
    return conditions;
  }

  /** Where a reading is not taken of which only the chart says that it might not be. */
  private int onlyHereNotTaken() {
    Set<String> ofTheSymptom = refusable(ofTheSymptom());
    int found = Diagrams.NONE;
    for (String reading : refusable(conditions(chart).stream())) {
      if (!ofTheSymptom.contains(reading)) {
        Axis.Subject subject = new Axis.OfReading(reading);
        int notTaken =
            space.literal(subject, space.axis(subject).where(Cell.NotTaken.class::isInstance));
        found = diagrams.or(found, notTaken);
      }
    }
    return found;
  }

  private Stream<Condition> ofTheSymptom() {
    Symptom own = symptom.symptom();
    return Stream.of(
            Stream.of(own.recognise()),
            own.first().stream().map(Symptom.First::when),
            own.rules().values().stream().map(Rule::when),
            symptom.nevers().stream().map(Never::when))
        .flatMap(conditions -> conditions);
  }

  private static Set<String> refusable(Stream<Condition> conditions) {
    Set<String> readings = new TreeSet<>();
    conditions
        .flatMap(Condition::tests)
        .filter(test -> test.pattern() instanceof CannotBeTaken)
        .map(Test::subject)
        .forEach(readings::add);
    return readings;
  }

  Chart chart() {
    return chart;
  }

  SymptomSpace symptom() {
    return symptom;
  }

  Space space() {
    return space;
  }

  Diagrams diagrams() {
    return diagrams;
  }

  /** The situations whose way through the chart is looked at. */
  int start() {
    return diagrams.minus(scope, undecided);
  }

  /** Whether there is a situation at all, and none in which the rules lack a figure. */
  boolean isWhole() {
    return scope != Diagrams.NONE && undecided == Diagrams.NONE;
  }

  /** Where an answer holds. */
  int where(Branch branch) {
    return space.truth(branch.when()).isTrue();
  }
}
