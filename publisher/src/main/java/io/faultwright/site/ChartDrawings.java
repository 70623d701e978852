package io.faultwright.site;

import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.ScopedChart;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.Paper;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.piece.Fingerprints;
import io.faultwright.piece.Made;
import io.faultwright.piece.Piece;
import io.faultwright.piece.Workshop;
import io.faultwright.render.svg.ChartSvg;
import java.io.IOException;
import java.net.URI;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Draws the charts of every symptom as standalone SVG files. */
public final class ChartDrawings {
  private final KnowledgeBase kb;
  private final Imprint imprint;
  private final Paper paper;
  private final Excerpts excerpts;
  private final Fingerprints fingerprints = Fingerprints.withoutPlaces();

  /**
   * @param draft whether every chart is marked as a draft
   */
  public ChartDrawings(KnowledgeBase kb, boolean draft, Paper paper) {
    this.kb = kb;
    this.imprint = Imprint.of(kb.handbook(), draft);
    this.paper = paper;
    this.excerpts = new Excerpts(kb);
  }

  /**
   * The charts of each symptom, by its id.
   *
   * @param workshop draws them, as far as they were not drawn before
   */
  public SortedMap<String, Drawn> all(Workshop workshop) throws IOException {
    List<Piece> pieces = kb.symptoms().values().parallelStream().map(this::piece).toList();
    Iterator<Made> made = workshop.make(pieces).iterator();
    SortedMap<String, Drawn> charts = new TreeMap<>();
    kb.symptoms().keySet().forEach(id -> charts.put(id, ChartFiles.drawn(id, made.next())));
    return charts;
  }

  private Piece piece(Symptom symptom) {
    KnowledgeBase excerpt = excerpts.forDrawing(symptom);
    return new Piece(
        "charts of " + symptom.id(),
        Optional.of(fingerprints.of(symptom.id(), excerpt, imprint, paper)),
        () -> ChartFiles.made(symptom.id(), of(excerpt, symptom)));
  }

  private Drawn of(KnowledgeBase excerpt, Symptom symptom) {
    ChartLayout layout = new ChartLayout(imprint, paper);
    List<ScopedChart> charts = ChartBuilder.charts(excerpt, symptom);
    return new Drawn(
        charts.stream().flatMap(chart -> sheets(layout, chart, address(excerpt, symptom))).toList(),
        new GuidedFiles(excerpt).symptom(symptom, charts));
  }

  private static Stream<ChartSheet> sheets(
      ChartLayout layout, ScopedChart chart, Optional<String> address) {
    return layout.pages(chart.chart(), address).stream()
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
