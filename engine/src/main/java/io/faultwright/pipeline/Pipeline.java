package io.faultwright.pipeline;

import io.faultwright.analysis.Analyses;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOffs;
import io.faultwright.model.Symptom;
import io.faultwright.report.CheckReport;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.resolve.SignOffReader;
import io.faultwright.run.Runner;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

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
  private final KnownProofs known;

  public Pipeline(Scope scope, Watch watch) {
    this(scope, watch, KnownProofs.NONE);
  }

  /**
   * A flow that leaves out what is known already.
   *
   * @param known symptoms without error; a report without errors says nothing further of them
   */
  public Pipeline(Scope scope, Watch watch, KnownProofs known) {
    this.scope = scope;
    this.watch = watch;
    this.known = known;
  }

  /**
   * Reads and checks a knowledge base.
   *
   * @throws io.faultwright.diagnostic.Unreadable with every problem of every file
   * @throws InternalDisagreement where the analyses and Drools disagree
   */
  public Checked check(Sources sources) {
    watch.phase("read");
    Resolution read = Resolver.resolution(sources);
    KnowledgeBase kb = read.knowledge();
    scope.requireSymptom(kb);
    Due due = new Due(scope, proved(kb));
    SignOffs signOffs = SignOffReader.read(sources, kb);
    Checked checked = check(read, due, signOffs);
    boolean whole = due.proved().isEmpty() || checked.report().errors() == 0;
    return whole ? checked : check(read, new Due(scope, Set.of()), signOffs);
  }

  private Set<String> proved(KnowledgeBase kb) {
    Excerpts excerpts = new Excerpts(kb);
    return kb.symptoms().values().parallelStream()
        .filter(symptom -> known.holds(symptom, () -> excerpts.forProof(symptom)))
        .map(Symptom::id)
        .collect(Collectors.toSet());
  }

  private Checked check(Resolution read, Due due, SignOffs signOffs) {
    KnowledgeBase kb = read.knowledge();
    watch.phase("compile");
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    watch.phase("cases");
    CaseChecks cases = CaseChecks.run(kb, due);
    watch.phase("analyses");
    List<SymptomCheck> symptoms = new SymptomChecks(kb, watch).run(due);
    List<Finding> whole = new ArrayList<>(Analyses.of(kb));
    whole.removeIf(finding -> !scope.concerns(finding));
    whole.addAll(new CourseChecks(kb, runner).findings(scope::concerns));
    watch.phase("replay");
    List<Finding> findings = new Replay(kb, runner).confirm(all(symptoms, whole, cases));
    return new Checked(kb, read.sessions(), report(kb, symptoms, findings, cases), signOffs);
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
