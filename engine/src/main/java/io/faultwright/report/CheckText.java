package io.faultwright.report;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A check's report for people. */
public final class CheckText {
  /** Places shown with their line; any further ones are only named. */
  private static final int SNIPPETS = 3;

  private final KnowledgeBase kb;
  private final SituationText situations;
  private final Snippet snippet;
  private final Ink ink;

  public CheckText(KnowledgeBase kb, Sources sources, Ink ink) {
    this.kb = kb;
    this.situations = new SituationText(kb);
    this.snippet = new Snippet(sources, ink);
    this.ink = ink;
  }

  /** The findings symptom by symptom, what concerns no symptom first, and a summary. */
  public String write(CheckReport report) {
    Map<String, List<Finding>> groups = new TreeMap<>();
    report
        .findings()
        .forEach(
            finding ->
                groups
                    .computeIfAbsent(finding.symptom().orElse(""), id -> new ArrayList<>())
                    .add(finding));
    String body =
        groups.entrySet().stream()
            .map(group -> heading(group.getKey()) + findings(group.getValue()))
            .collect(Collectors.joining());
    return ink.strong(Columns.printable(report.handbook()))
        + "\n\n"
        + body
        + new Summary(ink).of(report);
  }

  private String heading(String symptom) {
    String title =
        Optional.ofNullable(kb.symptoms().get(symptom)).map(Symptom::title).orElse(symptom);
    return symptom.isEmpty() ? "" : ink.strong(Columns.printable(title)) + " (" + symptom + ")\n\n";
  }

  /** Some findings, one after the other. */
  public String findings(List<Finding> findings) {
    return findings.stream().map(this::finding).collect(Collectors.joining());
  }

  /** One finding with its lines, example and help. */
  String finding(Finding finding) {
    return head(finding)
        + places(finding.places())
        + Block.of("where", region(finding))
        + Block.of("for example", finding.witness().map(situations::lines).orElse(List.of()))
        + Block.of("course", finding.course().map(CourseText::lines).orElse(List.of()))
        + Block.of("share", finding.share().map(Shares::words).map(CheckText::ofAll).orElse(""))
        + Block.of("help", finding.help())
        + "\n";
  }

  private static String ofAll(String share) {
    return share + " of the situations that can be told apart";
  }

  private String head(Finding finding) {
    String label = Ink.word(finding.kind().severity()) + "[" + finding.kind().slug() + "]";
    return ink.severity(finding.kind().severity(), label)
        + ": "
        + ink.strong(Columns.printable(finding.message()))
        + "\n";
  }

  private String places(List<Place> places) {
    String shown = places.stream().limit(SNIPPETS).map(snippet::of).collect(Collectors.joining());
    String named =
        places.stream()
            .skip(SNIPPETS)
            .map(place -> "  " + ink.frame(place.toString()) + "\n")
            .collect(Collectors.joining());
    return shown + named;
  }

  private static List<String> region(Finding finding) {
    return finding.region().stream().map(test -> test.reading() + ": " + test.accepts()).toList();
  }
}
