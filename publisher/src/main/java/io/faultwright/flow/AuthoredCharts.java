package io.faultwright.flow;

import io.faultwright.analysis.chart.ChartCourse;
import io.faultwright.analysis.order.ChartCosts;
import io.faultwright.analysis.order.OrderCost;
import io.faultwright.model.Build;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.wording.Wording;
import io.faultwright.words.Words;
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
   * Their ways through the symptom's situations.
   *
   * @param builds the equipment in question
   */
  static List<Authored> courses(KnowledgeBase knowledge, Symptom symptom, List<Build> builds) {
    List<Build> left = new ArrayList<>(builds);
    List<Authored> courses = new ArrayList<>();
    for (Chart chart : knowledge.charts(symptom.id())) {
      List<Build> own = left.stream().filter(build -> build.satisfies(chart.applies())).toList();
      if (!own.isEmpty()) {
        ChartCourse.of(knowledge, chart, own)
            .map(course -> new Authored(chart.id(), course, cost(chart, course)))
            .ifPresent(courses::add);
        courses.forEach(one -> left.removeAll(one.course().builds()));
      }
    }
    return courses;
  }

  /** One of them in the words of a knowledge base. */
  static ScopedChart drawn(KnowledgeBase shown, Authored authored) {
    ChartCourse course = authored.course();
    Chart chart = shown.charts().get(authored.chart());
    Wording wording = Wording.published(shown);
    String scope = ChartBuilder.scope(shown, wording, course.builds());
    Flowchart drawing =
        new AuthoredDrawing(chart, course, shown, wording)
            .chart(noted(scope, course, wording.say()));
    OutcomeWords outcomes = new OutcomeWords(shown, shown.symptoms().get(chart.symptom()), wording);
    return new ScopedChart(
        course.builds(), scope, drawing, authored.cost(), AuthoredCourse.of(chart, outcomes));
  }

  /** What it takes, and the least that any order the symptom allows can take. */
  private static Optional<OrderCost> cost(Chart chart, ChartCourse course) {
    return Optional.of(course.symptom())
        .filter(symptom -> course.proved())
        .flatMap(symptom -> ChartCosts.of(symptom, chart, symptom.possible()))
        .map(cost -> new OrderCost(cost.minutes(), cost.weighted(), cost.cheapest().atLeast()));
  }

  /** What stands below the title: the equipment, and that a person chose the order. */
  private static String noted(String scope, ChartCourse course, Words say) {
    String note =
        course.proved()
            ? say.say("written by hand, proved")
            : say.say("written by hand, not proved");
    return scope.isEmpty() ? Words.upperFirst(note) : scope + "; " + note;
  }
}
