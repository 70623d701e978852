package io.faultwright.site;

import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.ScopedChart;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.render.svg.ChartSvg;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Draws the charts of every symptom as standalone SVG files. */
public final class ChartDrawings {
  private final KnowledgeBase kb;
  private final ChartLayout layout;

  /**
   * @param draft whether every chart is marked as a draft
   */
  public ChartDrawings(KnowledgeBase kb, boolean draft, Paper paper) {
    this.kb = kb;
    this.layout = new ChartLayout(Imprint.of(kb.handbook(), draft), paper);
  }

  /** The charts of each symptom, by its id. */
  public SortedMap<String, Drawn> all() {
    SortedMap<String, Drawn> charts = new TreeMap<>();
    kb.symptoms().forEach((id, symptom) -> charts.put(id, of(symptom)));
    return charts;
  }

  private Drawn of(Symptom symptom) {
    List<ScopedChart> charts = ChartBuilder.charts(kb, symptom);
    return new Drawn(
        charts.stream().flatMap(chart -> sheets(symptom, chart)).toList(),
        new GuidedFiles(kb).symptom(symptom, charts));
  }

  private Stream<ChartSheet> sheets(Symptom symptom, ScopedChart chart) {
    return layout.pages(chart.chart(), address(kb, symptom)).stream()
        .map(
            page ->
                new ChartSheet(
                    ChartSvg.standalone(page), chart.scope(), page.number(), page.count()));
  }

  /** Where the symptom's page will stand online, if the handbook says where it will stand. */
  public static Optional<String> address(KnowledgeBase kb, Symptom symptom) {
    return kb.handbook()
        .base()
        .map(
            base ->
                URI.create(
                        base.replaceFirst("/+$", "")
                            + "/"
                            + SitePaths.file(new Target(Target.Kind.SYMPTOM, symptom.id())))
                    .toASCIIString());
  }
}
