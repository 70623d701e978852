package io.faultwright.pipeline;

import io.faultwright.compile.Program;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.input.CaseFile;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CaseRun;
import io.faultwright.report.RunReport;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Borderline;
import io.faultwright.run.CaseResult;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

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
        wanted.stream().distinct().map(id -> new GivenCase(kb.cases().get(id), true)).toList();
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

  private Problem noCase(String id) {
    return new Problem(
        List.of(), "there is no case `" + id + "`", NearMatch.help(id, kb.cases().keySet()));
  }

  private static CaseRun run(GivenCase one, Runner runner, Borderlines borderlines) {
    CaseResult result = runner.run(one.recorded());
    Optional<Borderline> borderline =
        borderlines.of(one.recorded().symptom(), one.recorded().given(), result.trace().verdict());
    return new CaseRun(result, borderline, one.judged());
  }

  private RunReport run(GivenCases given) {
    Program program = RuleCompiler.compile(kb);
    Runner runner = new Runner(kb, program);
    Borderlines borderlines = new Borderlines(kb, runner, program.limits());
    List<CaseRun> runs = given.cases().stream().map(one -> run(one, runner, borderlines)).toList();
    return new RunReport(kb.handbook().title(), runs, given.problems());
  }
}
