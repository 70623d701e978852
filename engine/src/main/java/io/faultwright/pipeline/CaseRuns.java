package io.faultwright.pipeline;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.input.CaseFile;
import io.faultwright.input.CaseInput;
import io.faultwright.input.TableUse;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CaseRun;
import io.faultwright.report.RunReport;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.util.Collection;
import java.util.List;
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
    return run(cases);
  }

  /**
   * What a file says about the columns of a table.
   *
   * @throws Unreadable with every problem of the file
   */
  public ColumnMap columns(SourceFile file) {
    return resolution.columns(file);
  }

  /**
   * The cases of a file, one by one, in memory that does not grow with a table.
   *
   * @param path what to call the file in messages
   * @param use how its columns are read, where it is a table
   * @param each is given every case as soon as it was run
   * @throws Unreadable where the file as a whole makes no sense
   */
  public InputRun of(String path, BufferedReader text, TableUse use, Consumer<CaseRun> each) {
    CaseInput input = CaseFile.open(path, text, kb, use);
    CaseJudge judge = new CaseJudge(kb);
    return InputRun.of(
        path,
        input,
        resolution.intake(),
        one -> {
          CaseRun run = judge.run(one);
          each.accept(run);
          return run.passed();
        });
  }

  /** A case that nobody has confirmed is run, and not judged. */
  private static GivenCase asked(Case recorded) {
    return new GivenCase(recorded, recorded.confirmed());
  }

  private Problem noCase(String id) {
    return new Problem(
        List.of(), "there is no case `" + id + "`", NearMatch.help(id, kb.cases().keySet()));
  }

  private RunReport run(List<GivenCase> cases) {
    CaseJudge judge = new CaseJudge(kb);
    List<CaseRun> runs = cases.stream().map(judge::run).toList();
    return new RunReport(kb.handbook().title(), runs, List.of());
  }
}
