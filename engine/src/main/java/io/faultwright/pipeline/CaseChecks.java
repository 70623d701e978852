package io.faultwright.pipeline;

import io.faultwright.analysis.coverage.CaseAnalysis;
import io.faultwright.analysis.coverage.CaseRecord;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.StatusWords;
import io.faultwright.run.CaseResult;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What running the recorded cases showed.
 *
 * @param findings cases that failed, rules that no case fires
 * @param passed how many came out as expected
 * @param failed how many did not
 */
record CaseChecks(List<Finding> findings, int passed, int failed) {
  /** Runs each case by the excerpt of its symptom, so that nothing else can matter to it. */
  static CaseChecks run(KnowledgeBase kb, Due due) {
    Excerpts excerpts = new Excerpts(kb);
    Map<String, Runner> runners = new ConcurrentHashMap<>();
    Function<String, Runner> runner =
        id -> runners.computeIfAbsent(id, none -> runner(excerpts.forProof(kb.symptoms().get(id))));
    List<CaseRecord> records =
        kb.cases().values().parallelStream()
            .filter(recorded -> due.concerns(recorded.symptom()))
            .map(recorded -> record(runner.apply(recorded.symptom()).run(recorded)))
            .toList();
    List<CaseRecord> judged = records.stream().filter(one -> one.recorded().confirmed()).toList();
    int passed = (int) judged.stream().filter(CaseRecord::passed).count();
    List<Finding> findings =
        CaseAnalysis.findings(kb, records).stream().filter(due::concerns).toList();
    return new CaseChecks(findings, passed, judged.size() - passed);
  }

  private static Runner runner(KnowledgeBase excerpt) {
    return new Runner(excerpt, RuleCompiler.compile(excerpt));
  }

  private static CaseRecord record(CaseResult result) {
    Trace trace = result.trace();
    return new CaseRecord(result.recorded(), result.passed(), trace.fired(), outcome(trace));
  }

  private static String outcome(Trace trace) {
    return trace.answers().isEmpty()
        ? "nothing: " + StatusWords.of(trace)
        : CaseAnalysis.words(trace.answers());
  }
}
