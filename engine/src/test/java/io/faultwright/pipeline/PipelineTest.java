package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.Finding;
import io.faultwright.input.TableUse;
import io.faultwright.report.CaseRun;
import io.faultwright.report.CheckJson;
import io.faultwright.report.CheckReport;
import io.faultwright.report.RunReport;
import io.faultwright.report.SymptomSummary.Proof;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.io.StringReader;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class PipelineTest {
  private static final String RULES =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      equipment:
        families: { fell: { title: Fell } }
        models: { FL-1: { title: Fell 1, family: fell, options: {} } }
      readings:
        ice: { ask: "How is the ice?", values: [untouched, loose, none], normal: none }
        fan: { ask: "Does the fan run?", values: yes/no }
      faults:
        valve-stuck: { title: Valve stuck, remedy: [Replace it.], verify: [Look.] }
        fan-dead: { title: Fan dead, remedy: [Replace it.], verify: [Look.] }
      symptoms:
        ice-left:
          title: Ice is left
          recognise: { ice: [untouched, loose] }
          rules:
            valve: { when: { ice: untouched }, conclude: valve-stuck, because: It is. }
            fan: { when: { ice: untouched, fan: no }, conclude: fan-dead, because: It is. }
      cases:
        stuck:
          { symptom: ice-left, given: { model: FL-1, ice: untouched, fan: yes },
            expect: valve-stuck }
        wrong: { symptom: ice-left, given: { model: FL-1, ice: loose }, expect: fan-dead }
      """;

  @Test
  void everyFindingIsReportedAndEveryWitnessConfirmed() {
    CheckReport report = check(Scope.ALL).report();
    assertEquals(
        List.of("gap", "contradiction", "case-failed", "unlisted-value", "rule-untested"),
        kinds(report).stream().distinct().toList());
    report.findings().stream()
        .filter(finding -> finding.witness().isPresent())
        .forEach(finding -> assertTrue(finding.replayed(), finding.message()));
    assertEquals(1, report.casesPassed());
    assertEquals(1, report.casesFailed());
    assertEquals(Optional.of(false), report.symptoms().get(0).gapFree());
  }

  private static List<String> kinds(CheckReport report) {
    return report.findings().stream().map(finding -> finding.kind().slug()).toList();
  }

  @Test
  void sameSourcesGiveTheSameBytes() {
    Checked one = check(Scope.ALL);
    Checked two = check(Scope.ALL);
    assertEquals(
        new CheckJson(one.knowledge()).write(one.report()),
        new CheckJson(two.knowledge()).write(two.report()));
  }

  @Test
  void timeThatIsOverLeavesSymptomsNotComputed() {
    Scope scope = new Scope(Optional.empty(), Optional.of(Duration.ofMillis(1)));
    CheckReport report = new Pipeline(scope, new Stalling()).check(sources()).report();
    assertEquals(Proof.NOT_COMPUTED, report.symptoms().get(0).proof());
    assertEquals(Optional.empty(), report.symptoms().get(0).gapFree());
    assertFalse(report.complete());
  }

  /** Keeps the analysis of a symptom from ending until it is given up. */
  private static final class Stalling implements Watch {
    @Override
    public void step(int done, int all) {
      try {
        new CountDownLatch(1).await();
      } catch (InterruptedException givenUp) {
        Thread.currentThread().interrupt();
      }
    }
  }

  @Test
  void unknownSymptomIsRefusedWithTheNearestOne() {
    Scope scope = new Scope(Optional.of("ice-lefd"), Optional.empty());
    Unreadable refused = assertThrows(Unreadable.class, () -> check(scope));
    assertEquals("did you mean `ice-left`?", refused.problems().get(0).help());
  }

  @Test
  void scopeKeepsFindingsOfOneSymptom() {
    CheckReport report = check(new Scope(Optional.of("ice-left"), Optional.empty())).report();
    for (Finding finding : report.findings()) {
      assertTrue(finding.symptom().map("ice-left"::equals).orElse(true));
    }
  }

  @Test
  void phasesAreAnnouncedInTheirOrder() {
    List<String> phases = new ArrayList<>();
    Watch watch =
        new Watch() {
          @Override
          public void phase(String name) {
            phases.add(name);
          }
        };
    new Pipeline(Scope.ALL, watch).check(sources());
    assertEquals(List.of("read", "compile", "cases", "analyses", "replay"), phases);
  }

  @Test
  void namedCasesRunInTheOrderAskedFor() {
    RunReport report = new CaseRuns(sources()).named(List.of("wrong", "stuck"));
    assertEquals(
        List.of("wrong", "stuck"), report.runs().stream().map(r -> r.recorded().id()).toList());
    assertEquals(1, report.passed());
    assertEquals(1, report.failed());
  }

  @Test
  void unknownCaseIsRefused() {
    CaseRuns runs = new CaseRuns(sources());
    Unreadable refused = assertThrows(Unreadable.class, () -> runs.named(List.of("stuk")));
    assertEquals("did you mean `stuck`?", refused.problems().get(0).help());
  }

  @Test
  void witnessesOfACheckRunAsCases() {
    Checked checked = check(Scope.ALL);
    String json = new CheckJson(checked.knowledge()).write(checked.report());
    BufferedReader text = new BufferedReader(new StringReader(json));
    List<CaseRun> runs = new ArrayList<>();
    InputRun run = new CaseRuns(sources()).of("check.json", text, TableUse.OWN, runs::add);
    assertEquals(List.of(), run.problems());
    assertEquals(runs.size(), run.counts().run());
    assertTrue(runs.size() >= 3);
    assertTrue(runs.stream().anyMatch(one -> one.trace().contradictory()));
  }

  private static Checked check(Scope scope) {
    return new Pipeline(scope, Watch.NOBODY).check(sources());
  }

  private static Sources sources() {
    return new Sources(List.of(new SourceFile("handbook.yaml", RULES)));
  }
}
