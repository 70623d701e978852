package io.faultwright.pipeline;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.input.CaseFile;
import io.faultwright.input.CaseTable;
import io.faultwright.input.CaseTable.Item;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CaseRun;
import io.faultwright.report.RunReport;
import io.faultwright.resolve.CaseIntake;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Runs cases through the rules: those of the knowledge base, or those of a file. */
public final class CaseRuns {
  private final Resolution resolution;
  private final KnowledgeBase kb;

  /**
   * For the knowledge base in these files.
   *
   * @throws Unreadable with every problem of every file
   */
  public CaseRuns(Sources sources) {
    this.resolution = Resolver.resolution(sources);
    this.kb = resolution.knowledge();
  }

  public KnowledgeBase knowledge() {
    return kb;
  }

  /**
   * Cases of the knowledge base, in the order asked for; all of them where none is named.
   *
   * @throws Unreadable where there is no such case
   */
  public RunReport named(List<String> ids) {
    Problems problems = new Problems();
    ids.stream().filter(id -> !kb.cases().containsKey(id)).forEach(id -> problems.add(noCase(id)));
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    Collection<String> wanted = ids.isEmpty() ? kb.cases().keySet() : ids;
    List<GivenCase> cases =
        wanted.stream().distinct().map(id -> asked(kb.cases().get(id))).toList();
    return run(new GivenCases(cases, List.of()));
  }

  /**
   * The cases of a file, in its order.
   *
   * @throws Unreadable where the file as a whole makes no sense
   */
  public RunReport of(SourceFile input) {
    return run(CaseFile.read(input, resolution));
  }

  /**
   * The cases of a table, row by row, in memory that does not grow with it.
   *
   * @param path what to call the table in messages
   * @param each is given every case as soon as it was run
   * @throws Unreadable where the table as a whole makes no sense, or from there on
   */
  public TableRun of(String path, BufferedReader table, Consumer<CaseRun> each) {
    Problems problems = new Problems();
    CaseTable rows = new CaseTable(path, table, kb, problems);
    CaseIntake intake = resolution.intake();
    CaseJudge judge = new CaseJudge(kb);
    TableRun.Tally tally = new TableRun.Tally(path);
    for (Optional<Item> item = rows.next(); item.isPresent(); item = rows.next()) {
      GivenCases read = intake.read(item.get().entry());
      read.cases().forEach(one -> each.accept(tally.count(judge.run(one))));
      tally.keep(item.get(), read.problems());
    }
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return tally.result();
  }

  /** A case that nobody has confirmed is run, and not judged. */
  private static GivenCase asked(Case recorded) {
    return new GivenCase(recorded, recorded.confirmed());
  }

  private Problem noCase(String id) {
    return new Problem(
        List.of(), "there is no case `" + id + "`", NearMatch.help(id, kb.cases().keySet()));
  }

  private RunReport run(GivenCases given) {
    CaseJudge judge = new CaseJudge(kb);
    List<CaseRun> runs = given.cases().stream().map(judge::run).toList();
    return new RunReport(kb.handbook().title(), runs, given.problems());
  }
}
