package io.faultwright.pipeline;

import io.faultwright.analysis.Analyses;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CheckReport;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole flow, a line for each phase.
 *
 * <pre>
 * sources -> knowledge base -> Drools program -> cases run
 *                          \-> analyses -> findings -> replayed in Drools -> report
 * </pre>
 */
public final class Pipeline {
  private final Scope scope;
  private final Watch watch;

  public Pipeline(Scope scope, Watch watch) {
    this.scope = scope;
    this.watch = watch;
  }

  /**
   * Reads and checks a knowledge base.
   *
   * @throws io.faultwright.diagnostic.Unreadable with every problem of every file
   * @throws InternalDisagreement where the analyses and Drools disagree
   */
  public Checked check(Sources sources) {
    watch.phase("read");
    KnowledgeBase kb = Resolver.resolve(sources);
    scope.requireSymptom(kb);
    watch.phase("compile");
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    watch.phase("cases");
    CaseChecks cases = CaseChecks.run(kb, runner, scope);
    watch.phase("analyses");
    List<SymptomCheck> symptoms = new SymptomChecks(kb, watch).run(scope);
    List<Finding> whole = Analyses.of(kb).stream().filter(scope::concerns).toList();
    watch.phase("replay");
    List<Finding> findings = new Replay(kb, runner).confirm(all(symptoms, whole, cases));
    return new Checked(kb, report(kb, symptoms, findings, cases));
  }

  private static List<Finding> all(
      List<SymptomCheck> symptoms, List<Finding> whole, CaseChecks cases) {
    List<Finding> findings = new ArrayList<>(whole);
    symptoms.forEach(symptom -> findings.addAll(symptom.findings()));
    findings.addAll(cases.findings());
    return findings;
  }

  private static CheckReport report(
      KnowledgeBase kb, List<SymptomCheck> symptoms, List<Finding> findings, CaseChecks cases) {
    return new CheckReport(
        kb.handbook().title(),
        findings,
        symptoms.stream().map(SymptomCheck::summary).toList(),
        symptoms.stream().flatMap(symptom -> symptom.charts().stream()).toList(),
        cases.passed(),
        cases.failed());
  }
}
