package io.faultwright.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Share;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whenever the time is over: what is said holds, and what was not looked at is said to be open. */
class OutOfTimeTest {
  private static final String YAML =
      """
      handbook: { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en, disclaimer: Made up. }
      readings:
        p: { ask: Is it p, values: yes/no }
        q: { ask: Is it q, values: yes/no }
        s: { ask: Which s, values: [lo, ok, hi] }
      faults:
        a: { title: A, remedy: [Mend it.], verify: [Look.] }
        b: { title: B, remedy: [Mend it.], verify: [Look.] }
      symptoms:
        x:
          title: X
          rules:
            r1: { when: { p: yes, s: lo }, conclude: a, because: So. }
            r2: { when: { q: yes, s: lo }, conclude: b, because: So. }
            r3: { when: { s: ok, p: no }, conclude: a, because: So. }
            r4: { when: { s: hi, q: no }, conclude: b, because: So. }
            r5: { when: { s: hi, q: no, p: yes }, conclude: b, because: So. }
      """;

  private static final KnowledgeBase KB =
      Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", YAML))));

  /** A space whose time is over after so many looks at the clock. */
  private static SymptomSpace space(int looks) {
    AtomicLong clock = new AtomicLong();
    Deadline deadline = new Deadline(looks, clock::incrementAndGet);
    return SymptomSpace.of(KB, KB.symptoms().get("x"), deadline);
  }

  private static Set<String> messages(Analyses.Looked looked) {
    return looked.findings().stream()
        .map(Finding::message)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void nothingIsSaidThatDoesNotHold() {
    Set<String> all = messages(Analyses.of(space(Integer.MAX_VALUE)));
    int unfinished = 0;
    int whole = 0;
    for (int looks = 0; looks < 60; looks++) {
      Analyses.Looked looked = Analyses.of(space(looks));
      Set<String> said = messages(looked);
      unfinished += said.removeIf(message -> message.contains("time was not enough")) ? 1 : 0;
      whole += looked.open().isEmpty() ? 1 : 0;
      assertTrue(all.containsAll(said), said::toString);
      assertTrue(!looked.open().isEmpty() || said.equals(all));
    }
    assertTrue(unfinished > 0, "a gap is told before its regions are known");
    assertTrue(whole > 0 && whole < 60);
    assertEquals(Set.of(), Analyses.of(space(Integer.MAX_VALUE)).open());
  }

  @Test
  void aGapToldEarlyIsOne() {
    Finding early = firstUnfinished();
    assertEquals(FindingKind.GAP, early.kind());
    assertEquals(List.of(), early.region());
    Runner runner = new Runner(KB, RuleCompiler.compile(KB));
    assertTrue(runner.run("x", early.witness().orElseThrow()).answers().isEmpty());
  }

  private static Finding firstUnfinished() {
    for (int looks = 0; looks < 60; looks++) {
      Optional<Finding> found =
          Analyses.of(space(looks)).findings().stream()
              .filter(finding -> finding.message().contains("time was not enough"))
              .findFirst();
      if (found.isPresent()) {
        return found.get();
      }
    }
    throw new AssertionError("no gap was told early");
  }

  /** Of twelve situations five are open and one has two answers, counted by hand. */
  @Test
  void sharesAreExactOrBounds() {
    bounded(GapAnalysis::share, 5.0 / 12);
    bounded(ContradictionAnalysis::share, 1.0 / 12);
  }

  private static void bounded(Function<SymptomSpace, Share> asked, double exact) {
    int told = 0;
    for (int looks = 0; looks < 40; looks++) {
      try {
        Share share = asked.apply(space(looks));
        assertTrue(share.low() <= exact + 1e-8 && exact - 1e-8 <= share.high(), share::toString);
        told += share.exact() ? 1 : 0;
      } catch (OutOfTime late) {
        assertEquals(0, told, "with more time, no less is told");
      }
    }
    assertTrue(told > 0);
    assertEquals(exact, asked.apply(space(Integer.MAX_VALUE)).low(), 1e-8);
  }
}
