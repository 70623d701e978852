package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.adequacy.Measured;
import io.faultwright.analysis.review.RuleRegions;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.page.CasesSheets;
import io.faultwright.page.DecisionTable;
import io.faultwright.page.ReviewSheet;
import io.faultwright.page.ReviewSheets;
import io.faultwright.page.ReviewSource;
import io.faultwright.pipeline.CaseMeasure;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.LastChanges;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Reviewing;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.pipeline.Stop;
import io.faultwright.pipeline.Watch;
import io.faultwright.plain.PlainCheck;
import io.faultwright.release.SignatureCheck;
import io.faultwright.render.html.ReviewHtml;
import io.faultwright.review.Region;
import io.faultwright.revision.GitHistory;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report of a handbook with a gap, a contradiction, signatures and hostile texts. */
class ReviewReportTest {
  private static final String HOSTILE = "<script>alert('x')</script> ${1+1} <#list>";

  @TempDir private static Path folder;
  private static KnowledgeBase kb;
  private static Checked checked;
  private static ReviewSheet sheet;
  private static SortedMap<String, byte[]> files;

  @BeforeAll
  static void write() throws Exception {
    Checked plain = new Pipeline(Scope.ALL, Watch.NOBODY).check(sources());
    SignOffCheck signed = new SignOffCheck(plain, new TreeMap<>(), SignatureCheck.NONE);
    checked = signed.checked(Scope.ALL);
    kb = checked.knowledge();
    sheet = ReviewSheets.of(source(signed));
    files = new ReviewHtml().files(sheet, CasesSheets.of(kb, measured()));
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
  }

  /** The dishwashers without a rule, without a pair that may stand together, and with markup. */
  private static Sources sources() {
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file :
        FolderReader.read(Path.of("..", "rules", "pass-through-dishwashers")).files()) {
      files.add(SourceFile.of(file.path(), broken(file.path(), file.text())));
    }
    return new Sources(files);
  }

  private static String broken(String path, String text) {
    return switch (path) {
      case "symptoms.yaml" ->
          text.replace("    together: [[filters-clogged, wash-arm-blocked]]\n", "")
              .replaceFirst("(?s)      plug-is-out:.*?(?=      hood-is-open:)", "")
              .replace("The pump cannot draw through clogged filters.", '"' + HOSTILE + '"')
              .replace("title: The ware is not clean", "title: \"" + HOSTILE + "\"");
      case "handbook.yaml" ->
          text.replaceFirst("handbook:\n", "handbook:\n  sign-off: { rule: engineering }\n");
      default -> text;
    };
  }

  private static ReviewSource source(SignOffCheck signed) {
    Stop stop = new Stop(Optional.empty());
    LastChanges changes = new LastChanges(new GitHistory(folder), kb, stop);
    PlainCheck plain = new PlainCheck(kb);
    return new ReviewSource(
        kb,
        checked.report().findings(),
        new TreeMap<>(),
        new Reviewing(kb, changes, checked.report().findings(), stop, Watch.NOBODY).all(),
        signed.states(),
        new ReviewSource.Plain(true, plain.count(), PlainCheck.MOST_WORDS, plain.hints()));
  }

  private static Measured measured() {
    CaseMeasure.Options options = new CaseMeasure.Options(Optional.empty(), false, false);
    return new CaseMeasure(
            options,
            (all, symptom, cases, deadline) -> List.of(),
            new Stop(Optional.empty()),
            Watch.NOBODY)
        .measure(kb);
  }

  private static String text(String path) {
    return new String(files.get(path), StandardCharsets.UTF_8);
  }

  /** The part of a complaint's page that is about a rule. */
  private static String section(Symptom symptom, Rule rule) {
    String page = text("symptom-" + symptom.id() + ".html");
    int start = page.indexOf("<h3 id=\"rule-" + rule.id() + "\">");
    assertTrue(start > 0, rule.id());
    return page.substring(start, page.indexOf("</section>", start));
  }

  private interface Look {
    void at(Symptom symptom, Rule rule);
  }

  private static void everyRule(Look look) {
    for (Symptom symptom : kb.symptoms().values()) {
      symptom.rules().values().forEach(rule -> look.at(symptom, rule));
    }
  }

  @Test
  void everyRuleIsOneStepFromTheIndex() {
    String index = text("index.html");
    everyRule(
        (symptom, rule) ->
            assertTrue(
                index.contains(
                    "<a href=\"symptom-" + symptom.id() + ".html#rule-" + rule.id() + "\">"),
                rule.id()));
  }

  /** The other judge says which cases fire it. */
  @Test
  void everyRuleHasItsCases() {
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    everyRule(
        (symptom, rule) -> {
          SortedSet<String> fired = new TreeSet<>();
          kb.cases().values().stream()
              .filter(one -> one.symptom().equals(symptom.id()))
              .filter(one -> runner.run(symptom.id(), one.given()).fired().contains(rule.id()))
              .forEach(one -> fired.add(one.id()));
          assertEquals(fired, listed(section(symptom, rule)), rule.id());
        });
  }

  private static SortedSet<String> listed(String section) {
    SortedSet<String> listed = new TreeSet<>();
    Pattern.compile("<li><code>([a-z0-9-]+)</code>")
        .matcher(section)
        .results()
        .forEach(found -> listed.add(found.group(1)));
    return listed;
  }

  @Test
  void everyRuleHasItsChangeAndItsSigner() {
    everyRule(
        (symptom, rule) -> {
          assertTrue(section(symptom, rule).contains("no history here"), rule.id());
          assertTrue(section(symptom, rule).contains("not signed as engineering"), rule.id());
        });
  }

  @Test
  void regionsAreThoseOfTheAnalysis() {
    for (Symptom symptom : kb.symptoms().values()) {
      RuleRegions regions = new RuleRegions(SymptomSpace.of(kb, symptom));
      for (ReviewSheet.Rule rule : complaint(symptom.id()).rules()) {
        Region region = regions.of(rule.id());
        assertEquals(
            region.boxes().stream().map(box -> box.size()).toList(),
            rule.regions().stream().map(box -> box.size()).toList());
        String section = section(symptom, symptom.rules().get(rule.id()));
        rule.regions().stream()
            .flatMap(List::stream)
            .forEach(
                fact ->
                    assertTrue(
                        section.contains(fact.label() + ": <b>" + fact.text() + "</b>"),
                        fact.toString()));
      }
    }
  }

  private static ReviewSheet.Complaint complaint(String id) {
    return sheet.complaints().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private static long groups(String symptom, String kind) {
    return complaint(symptom).table().groups().stream()
        .filter(group -> group.kind().equals(kind))
        .count();
  }

  @Test
  void gapsAndContradictionsAreDrawn() {
    long gaps =
        checked.report().findings().stream()
            .filter(one -> one.kind() == FindingKind.GAP)
            .filter(one -> one.symptom().equals(Optional.of("does-not-fill")))
            .count();
    assertEquals(1, gaps);
    assertEquals(gaps, groups("does-not-fill", "gap"));
    assertTrue(text("symptom-does-not-fill.html").contains("<tbody class=\"gap\">"));
    assertEquals(1, groups("ware-not-clean", "clash"));
    assertTrue(text("symptom-ware-not-clean.html").contains("<tbody class=\"clash\">"));
  }

  /** A line of the table holds what a rule's own condition asks for, and no more. */
  @Test
  void linesOfTheTableAreTheConditions() {
    DecisionTable table = complaint("does-not-fill").table();
    assertEquals(List.of("Water tap open", "Drain plug"), table.columns().subList(0, 2));
    assertEquals(List.of("No", "", "", ""), table.groups().get(0).rows().get(0));
    DecisionTable.Group gap =
        table.groups().stream().filter(one -> one.kind().equals("gap")).findFirst().orElseThrow();
    assertEquals(List.of(List.of("Yes", "Out", "", "")), gap.rows());
  }

  @Test
  void textsStayTexts() {
    String page = text("symptom-ware-not-clean.html");
    assertTrue(
        page.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; ${1+1} &lt;#list&gt;"));
    files.forEach((path, bytes) -> assertFalse(text(path).contains("<script"), path));
  }

  @Test
  void everyPageIsValidAndNeedsNoOther() throws Exception {
    for (String path : files.keySet()) {
      if (path.endsWith(".html")) {
        assertEquals(List.of(), HtmlCheck.errors(folder.resolve(path)), path);
        assertFalse(text(path).matches("(?s).*(href|src)=\"[a-z]+:.*"), path);
      }
    }
  }

  @Test
  void everyAddressLeadsSomewhere() {
    files.keySet().stream().filter(path -> path.endsWith(".html")).forEach(this::follow);
  }

  private void follow(String path) {
    Pattern.compile("href=\"([^\"#]*)#?([^\"]*)\"")
        .matcher(text(path))
        .results()
        .forEach(
            link -> {
              String file = link.group(1).isEmpty() ? path : link.group(1);
              assertTrue(files.containsKey(file), path + " leads to " + file);
              String anchor = link.group(2);
              assertTrue(
                  anchor.isEmpty() || text(file).contains("id=\"" + anchor + "\""),
                  path + " leads to " + anchor);
            });
  }
}
