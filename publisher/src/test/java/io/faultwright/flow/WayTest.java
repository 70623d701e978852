package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.judge.Ruling;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.layout.Trail;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Recorded cases go along the charts to what the rules say, also where the charts are drawn. */
class WayTest {
  private final Map<Flowchart, List<ChartPage>> drawings = new IdentityHashMap<>();
  private int ended;
  private int pagesTurned;

  @Test
  void casesEndWhereTheRulesSay() {
    for (KnowledgeBase kb : Demos.all()) {
      Judge judge = new Judge(kb);
      kb.cases().values().forEach(one -> check(kb, judge, one));
    }
    assertTrue(ended > 150, "only " + ended);
    assertTrue(pagesTurned > 10, "only " + pagesTurned);
  }

  private void check(KnowledgeBase kb, Judge judge, Case one) {
    Symptom symptom = kb.symptoms().get(one.symptom());
    Observed observed = judge.observe(symptom, one.given());
    Optional<ScopedChart> chart =
        Demos.charts(kb, symptom).stream()
            .filter(scoped -> !scoped.course().steps().isEmpty())
            .filter(scoped -> scoped.builds().containsAll(observed.builds()))
            .filter(scoped -> !observed.builds().isEmpty())
            .findFirst();
    if (chart.isEmpty()) {
      return;
    }
    Way way = Way.along(kb, chart.get(), observed);
    assertJoined(chart.get().chart(), way.nodes());
    Ruling ruling = judge.decide(symptom, observed);
    if (way.end().isPresent() && !ruling.answers().isEmpty()) {
      assertEquals(ruling.answers(), way.end().get().answers(), one.id());
      ended++;
    }
    drawn(kb, chart.get().chart(), way.nodes());
  }

  private static void assertJoined(Flowchart chart, List<String> nodes) {
    for (int i = 1; i < nodes.size(); i++) {
      String from = nodes.get(i - 1);
      String to = nodes.get(i);
      assertTrue(
          chart.from(from).stream().anyMatch(edge -> edge.to().equals(to)), from + " to " + to);
    }
  }

  /** The trail comes to the same nodes in the same order, with connectors between. */
  private void drawn(KnowledgeBase kb, Flowchart chart, List<String> nodes) {
    List<ChartPage> pages =
        drawings.computeIfAbsent(
            chart, one -> new ChartLayout(Imprint.of(kb.handbook(), false), Paper.A4).pages(one));
    Trail trail = Trail.of(pages, nodes);
    List<String> visited = new ArrayList<>();
    for (Trail.Step step : trail.steps()) {
      Node node = pages.get(step.page()).nodes().get(step.node()).node();
      if (!(node instanceof Node.Connector) && !node.id().contains("/")) {
        visited.add(node.id());
      }
      step.edge()
          .map(edge -> pages.get(step.page()).edges().get(edge))
          .ifPresent(edge -> assertEquals(node.id(), edge.to()));
    }
    assertEquals(nodes, visited);
    pagesTurned += trail.lastPage() > 0 ? 1 : 0;
  }
}
