package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.chart.ChartAnalysis;
import io.faultwright.analysis.chart.ChartReport;
import io.faultwright.analysis.random.RandomCharts;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.run.Runner;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Drools walks the witness of every finding about a chart, and nothing of a chart that is right.
 */
class ChartReplayTest {
  private static final int COUNT = Integer.getInteger("random.chart.replays", 200);
  private static final List<FindingKind> KINDS =
      List.of(
          FindingKind.CHART_DIFFERS,
          FindingKind.CHART_ANSWER_MISSING,
          FindingKind.CHART_ANSWERS_OVERLAP,
          FindingKind.CHART_LOOP);

  private final AtomicInteger agreed = new AtomicInteger();
  private final AtomicInteger refused = new AtomicInteger();

  @Test
  void droolsAgreesOnEveryWitnessAndOnNothingElse() {
    LongStream.range(0, COUNT).parallel().forEach(this::replay);
    assertTrue(agreed.get() > COUNT / 2, "agreed: " + agreed);
    assertTrue(refused.get() > COUNT / 20, "refused: " + refused);
  }

  private void replay(long seed) {
    KnowledgeBase knowledge = RandomCharts.of(seed);
    Chart chart = knowledge.charts().get("by-hand");
    ChartReplay replay =
        new ChartReplay(knowledge, new Runner(knowledge, RuleCompiler.compile(knowledge)));
    ChartReport report = ChartAnalysis.of(knowledge, chart, Deadline.NEVER);
    for (Finding finding : report.findings()) {
      finding
          .witness()
          .ifPresent(
              witness -> {
                assertTrue(replay.agrees(finding, witness), () -> seed + " " + finding);
                agreed.incrementAndGet();
              });
    }
    if (report.proved()) {
      SymptomSpace space = SymptomSpace.of(knowledge, knowledge.symptoms().get(chart.symptom()));
      int offered = space.space().truth(chart.applies()).isTrue();
      Situation any =
          new Witness(space.space()).of(space.space().diagrams().and(space.possible(), offered));
      for (FindingKind kind : KINDS) {
        Finding wrong =
            Finding.of(kind, chart.place(), "", "")
                .in(chart.symptom(), List.of())
                .onChart("by-hand");
        assertFalse(replay.agrees(wrong, any), () -> seed + " " + kind);
      }
      refused.incrementAndGet();
    }
  }
}
