package io.faultwright.site;

import io.faultwright.flow.Imprint;
import io.faultwright.flow.ScopedChart;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Tongue;
import io.faultwright.render.svg.ChartSvg;
import io.faultwright.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Draws charts in one language. */
final class Sheets {
  private final Tongue tongue;
  private final Excerpts excerpts;
  private final Imprint imprint;
  private final Paper paper;

  /**
   * @param kb in that language
   */
  Sheets(KnowledgeBase kb, Tongue tongue, boolean draft, Paper paper) {
    this.tongue = tongue;
    this.excerpts = new Excerpts(kb);
    this.imprint = Imprint.of(kb.handbook(), draft);
    this.paper = paper;
  }

  Tongue tongue() {
    return tongue;
  }

  OfSymptom of(Symptom symptom) {
    return new OfSymptom(symptom.id(), excerpts.forDrawing(own(symptom)));
  }

  /** The symptom in this language. */
  private Symptom own(Symptom symptom) {
    return excerpts.whole().symptoms().get(symptom.id());
  }

  /** The charts of one symptom. */
  final class OfSymptom {
    private final String symptom;
    private final KnowledgeBase excerpt;

    private OfSymptom(String symptom, KnowledgeBase excerpt) {
      this.symptom = symptom;
      this.excerpt = excerpt;
    }

    /** All that belongs to the symptom, in this language. */
    KnowledgeBase excerpt() {
      return excerpt;
    }

    /** What they are drawn from. */
    Object inputs() {
      return List.of(excerpt, imprint);
    }

    /**
     * Draws them.
     *
     * @param files takes what is drawn
     */
    void draw(List<ScopedChart> charts, ChartFiles files) {
      ChartLayout layout = new ChartLayout(imprint, paper);
      Symptom own = excerpt.symptoms().get(symptom);
      Optional<String> address = ChartDrawings.address(excerpt, own);
      files.add(
          tongue.folder(),
          charts.stream().flatMap(chart -> sheets(layout, chart, address)).toList(),
          new GuidedFiles(excerpt).symptom(own, charts));
    }

    private Stream<ChartSheet> sheets(
        ChartLayout layout, ScopedChart chart, Optional<String> address) {
      Words say = Words.of(excerpt.handbook().language());
      return layout.pages(chart.chart(), address).stream()
          .map(page -> sheet(ChartSvg.standalone(page, say), chart.scope(), page));
    }

    private static ChartSheet sheet(String svg, String scope, ChartPage page) {
      return new ChartSheet(() -> svg, scope, page.number(), page.count());
    }
  }
}
