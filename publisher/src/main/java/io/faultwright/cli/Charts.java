package io.faultwright.cli;

import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.Imprint;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.render.svg.ChartSvg;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Draws the chart of every symptom. */
final class Charts {
  private final KnowledgeBase kb;
  private final ChartLayout layout;

  Charts(KnowledgeBase kb, Paper paper, boolean draft) {
    this.kb = kb;
    this.layout = new ChartLayout(Imprint.of(kb.handbook(), draft), paper);
  }

  /** The pages of each symptom's chart, by its id. */
  SortedMap<String, List<String>> draw() {
    SortedMap<String, List<String>> charts = new TreeMap<>();
    kb.symptoms().forEach((id, symptom) -> charts.put(id, draw(symptom)));
    return charts;
  }

  private List<String> draw(Symptom symptom) {
    return layout.pages(ChartBuilder.build(kb, symptom)).stream()
        .map(ChartSvg::standalone)
        .toList();
  }
}
