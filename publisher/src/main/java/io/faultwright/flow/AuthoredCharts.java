package io.faultwright.flow;

import io.faultwright.analysis.chart.ChartCourse;
import io.faultwright.analysis.order.ChartCosts;
import io.faultwright.analysis.order.OrderCost;
import io.faultwright.model.Build;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The charts that a trainer wrote for a symptom, as far as they can be drawn. Where two are for the
 * same equipment, the first by id is taken.
 */
final class AuthoredCharts {
  private AuthoredCharts() {}

  /**
   * The charts.
   *
   * @param builds the equipment in question
   */
  static List<ScopedChart> of(KnowledgeBase knowledge, Symptom symptom, List<Build> builds) {
    List<Build> left = new ArrayList<>(builds);
    List<ScopedChart> charts = new ArrayList<>();
    for (Chart chart : knowledge.charts(symptom.id())) {
      List<Build> own = left.stream().filter(build -> build.satisfies(chart.applies())).toList();
      if (!own.isEmpty()) {
        ChartCourse.of(knowledge, chart, own)
            .map(course -> drawn(knowledge, chart, course))
            .ifPresent(charts::add);
        charts.forEach(drawn -> left.removeAll(drawn.builds()));
      }
    }
    return charts;
  }

  private static ScopedChart drawn(KnowledgeBase knowledge, Chart chart, ChartCourse course) {
    Wording wording = Wording.published(knowledge);
    String scope = ChartBuilder.scope(knowledge, wording, course.builds());
    Flowchart drawing = new AuthoredDrawing(chart, course, wording).chart(noted(scope, course));
    return new ScopedChart(
        course.builds(), scope, drawing, cost(chart, course), AuthoredCourse.of(chart));
  }

  /** What it takes, and the least that any order the symptom allows can take. */
  private static Optional<OrderCost> cost(Chart chart, ChartCourse course) {
    return Optional.of(course.symptom())
        .filter(symptom -> course.proved())
        .flatMap(symptom -> ChartCosts.of(symptom, chart, symptom.possible()))
        .map(cost -> new OrderCost(cost.minutes(), cost.weighted(), cost.cheapest().atLeast()));
  }

  /** What stands below the title: the equipment, and that a person chose the order. */
  private static String noted(String scope, ChartCourse course) {
    String note = "written by hand, " + (course.proved() ? "proved" : "not proved");
    return scope.isEmpty() ? Words.upperFirst(note) : scope + "; " + note;
  }
}
