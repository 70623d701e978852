package io.faultwright.pipeline;

import io.faultwright.compile.Program;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CaseRun;
import io.faultwright.resolve.GivenCase;
import io.faultwright.run.CaseResult;
import io.faultwright.run.Runner;

/** Runs cases one by one, and looks at what else they could come to. */
final class CaseJudge {
  private final Runner runner;
  private final Borderlines borderlines;

  CaseJudge(KnowledgeBase kb) {
    Program program = RuleCompiler.compile(kb);
    this.runner = new Runner(kb, program);
    this.borderlines = new Borderlines(kb, runner, program.limits());
  }

  CaseRun run(GivenCase one) {
    Case recorded = one.recorded();
    CaseResult result = runner.run(recorded);
    return new CaseRun(
        result,
        borderlines.of(recorded.symptom(), recorded.given(), result.trace().verdict()),
        one.judged());
  }
}
