package io.faultwright.site;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.ScopedChart;
import io.faultwright.layout.Paper;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.piece.Fingerprint;
import io.faultwright.piece.Fingerprints;
import io.faultwright.piece.Made;
import io.faultwright.piece.Piece;
import io.faultwright.piece.Workshop;
import java.io.IOException;
import java.net.URI;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Draws the charts of every symptom as standalone SVG files. */
public final class ChartDrawings {
  private final List<Sheets> languages;
  private final KnowledgeBase kb;
  private final Excerpts excerpts;
  private final Paper paper;

  /**
   * @param draft whether every chart is marked as a draft
   */
  public ChartDrawings(KnowledgeBase kb, boolean draft, Paper paper) {
    Languages all = new Languages(kb);
    this.kb = kb;
    this.paper = paper;
    this.excerpts = new Excerpts(kb);
    this.languages =
        all.all().stream().map(tongue -> new Sheets(all.in(tongue), tongue, draft, paper)).toList();
  }

  /**
   * The charts of each symptom, by its id, by the tag of the language.
   *
   * @param workshop draws them, as far as they were not drawn before
   */
  public SortedMap<String, SortedMap<String, Drawn>> all(Workshop workshop) throws IOException {
    return drawn(kb.symptoms().keySet(), workshop);
  }

  /** The same for some symptoms. */
  SortedMap<String, SortedMap<String, Drawn>> drawn(Collection<String> symptoms, Workshop workshop)
      throws IOException {
    List<Begun> begun =
        symptoms.stream()
            .map(kb.symptoms()::get)
            .parallel()
            .map(symptom -> begun(symptom, workshop.fingerprints()))
            .toList();
    SortedMap<String, SortedMap<String, Drawn>> charts = new TreeMap<>();
    languages.forEach(one -> charts.put(one.tongue().tag(), new TreeMap<>()));
    Iterator<Made> made = workshop.make(begun.stream().map(Begun::piece).toList()).iterator();
    for (Begun one : begun) {
      add(one, made.next(), charts);
    }
    return charts;
  }

  private void add(Begun one, Made made, SortedMap<String, SortedMap<String, Drawn>> charts) {
    for (Sheets language : languages) {
      String folder = language.tongue().folder();
      charts
          .get(language.tongue().tag())
          .put(one.symptom(), ChartFiles.drawn(folder, one.symptom(), made, one.from()));
    }
  }

  /** What the charts of each symptom are drawn from. */
  SortedMap<String, Fingerprint> inputs() {
    Fingerprints fingerprints = Fingerprints.inWrittenOrder();
    SortedMap<String, Fingerprint> inputs = new TreeMap<>();
    kb.symptoms().forEach((id, symptom) -> inputs.put(id, begun(symptom, fingerprints).from()));
    return inputs;
  }

  /** The charts of a symptom before they are drawn. */
  private record Begun(String symptom, Fingerprint from, Piece piece) {}

  /** The order of the checks is worked out once for all languages. */
  private Begun begun(Symptom symptom, Fingerprints fingerprints) {
    List<Sheets.OfSymptom> all = languages.stream().map(one -> one.of(symptom)).toList();
    List<Object> inputs = all.stream().map(Sheets.OfSymptom::inputs).toList();
    Fingerprint from = fingerprints.of(symptom.id(), inputs, paper);
    String name = "charts of " + symptom.id();
    return new Begun(symptom.id(), from, Piece.of(name, from, () -> made(symptom, all)));
  }

  private Made made(Symptom symptom, List<Sheets.OfSymptom> all) {
    KnowledgeBase excerpt = excerpts.forDrawing(symptom);
    List<List<ScopedChart>> charts =
        ChartBuilder.charts(
            SymptomSpace.of(excerpt, symptom),
            all.stream().map(Sheets.OfSymptom::excerpt).toList());
    ChartFiles files = new ChartFiles(symptom.id());
    for (int i = 0; i < all.size(); i++) {
      all.get(i).draw(charts.get(i), files);
    }
    return files.made();
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
