package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.pipeline.CaseRuns;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.ItemCheck;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.pipeline.TellingApart;
import io.faultwright.pipeline.Watch;
import io.faultwright.release.SignatureCheck;
import io.faultwright.report.CheckText;
import io.faultwright.report.DistinctionText;
import io.faultwright.report.Ink;
import io.faultwright.report.ProblemText;
import io.faultwright.report.ProspectText;
import io.faultwright.report.TraceText;
import io.faultwright.sheet.ImportText;
import io.faultwright.sheet.LimitsExport;
import io.faultwright.sheet.LimitsImport;
import io.faultwright.sheet.SheetFile;
import io.faultwright.sheet.SheetFormat;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What the commands print for a knowledge base. */
final class Tool {
  private final Sources sources;

  Tool(Sources sources) {
    this.sources = sources;
  }

  Checked checked() {
    Checked checked =
        ItemCheck.checked(new Pipeline(Scope.ALL, Watch.NOBODY).check(sources), Scope.ALL);
    return new SignOffCheck(checked, new TreeMap<>(), SignatureCheck.NONE).checked(Scope.ALL);
  }

  /** The output of {@code check --sign-offs}. */
  String check() {
    Checked checked = checked();
    return new CheckText(checked.knowledge(), sources, Ink.PLAIN).write(checked.report());
  }

  /** The output of {@code check} where the knowledge base cannot be read. */
  String problems() {
    Unreadable unreadable = assertThrows(Unreadable.class, this::checked, "it can be read");
    return new ProblemText(sources, Ink.PLAIN).write(unreadable.problems());
  }

  /** The output of {@code run} for one case. */
  String run(String id, boolean explain) {
    CaseRuns runs = new CaseRuns(sources);
    return new TraceText(runs.knowledge(), Ink.PLAIN).write(runs.named(List.of(id)), explain);
  }

  /** The output of {@code tell-apart}. */
  String apart() {
    TellingApart telling = new TellingApart(sources, Watch.NOBODY);
    return new DistinctionText(telling.knowledge(), Ink.PLAIN)
        .overview(telling.distinctions(Optional.empty(), List.of()));
  }

  /** The output of {@code tell-apart --case}. */
  String ahead(String id) {
    TellingApart telling = new TellingApart(sources, Watch.NOBODY);
    TellingApart.Ahead ahead = telling.ahead(id);
    return new ProspectText(telling.knowledge(), Ink.PLAIN)
        .write(ahead.prospect(), ahead.verdict());
  }

  /** The CSV file of a table, without its byte order mark. */
  String export(String reading) {
    byte[] content = LimitsExport.bytes(sources, List.of(reading), SheetFormat.CSV);
    return SourceFile.of("sheet.csv", new String(content, StandardCharsets.UTF_8)).text();
  }

  /** What {@code import --preview} says about a CSV file. */
  String imports(String reading, String csv) {
    byte[] content = csv.getBytes(StandardCharsets.UTF_8);
    LimitsImport limits = new LimitsImport(sources, path -> sources.find(path).get().text());
    SheetFile sheet = SheetFile.read("sheet.csv", content, SheetFormat.CSV);
    return ImportText.write(limits.read(sheet, List.of(reading)));
  }
}
