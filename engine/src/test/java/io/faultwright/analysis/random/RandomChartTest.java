package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.chart.ChartAnalysis;
import io.faultwright.analysis.chart.ChartReport;
import io.faultwright.analysis.order.ChartCost;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Random charts, most of them spoiled by one change, against brute force: every point that can
 * matter is walked through the chart. {@code -Drandom.charts=10000} tries more of them.
 */
class RandomChartTest {
  private static final int COUNT = Integer.getInteger("random.charts", 500);

  private static final double EXACT = 1e-9;

  private final Map<String, AtomicInteger> shown = new ConcurrentHashMap<>();

  @Test
  void everyFindingAndEveryProofEqualsBruteForce() {
    LongStream.range(0, COUNT).parallel().forEach(this::compare);
    String counts = new TreeMap<>(shown).toString();
    for (FindingKind kind :
        new FindingKind[] {
          FindingKind.CHART_DIFFERS,
          FindingKind.CHART_ANSWER_MISSING,
          FindingKind.CHART_ANSWERS_OVERLAP,
          FindingKind.CHART_LOOP,
          FindingKind.CHART_STEP_UNREACHED
        }) {
      assertTrue(count(kind.slug()) >= COUNT / 60, kind + " in " + counts);
    }
    assertTrue(count("proved") > COUNT / 20, counts);
    assertTrue(count("dearer") >= COUNT / 60, counts);
    assertTrue(count("as cheap as can be") >= COUNT / 60, counts);
    assertTrue(count("circle nobody goes round") >= COUNT / 200, counts);
  }

  private int count(String what) {
    return shown.getOrDefault(what, new AtomicInteger()).get();
  }

  private void show(String what) {
    shown.computeIfAbsent(what, key -> new AtomicInteger()).incrementAndGet();
  }

  private void compare(long seed) {
    KnowledgeBase knowledge = RandomCharts.of(seed);
    Chart chart = knowledge.charts().get("by-hand");
    Symptom symptom = knowledge.symptoms().get(chart.symptom());
    SymptomSpace space = SymptomSpace.of(knowledge, symptom);
    int undecided = new MissingLimits(space).undecided();
    Cells cells = new Cells(space);
    Oracle oracle = new Oracle(knowledge, symptom);
    ChartOracle walks = new ChartOracle(knowledge, chart);
    AtomicInteger left = new AtomicInteger();
    new Points(knowledge, symptom)
        .forEach(
            point -> {
              if (oracle.fate(point).possible()) {
                if (cells.holds(undecided, cells.of(point, oracle))) {
                  left.addAndGet(oracle.holds(chart.applies(), point) ? 1 : 0);
                } else {
                  walks.walk(point);
                }
              }
            });
    ChartReport report = ChartAnalysis.of(knowledge, chart, Deadline.NEVER);
    assertEquals(walks.found(), words(report), () -> seed + " " + chart);
    assertEquals(walks.isCircular(), has(report, false), () -> seed + " circular " + chart);
    assertEquals(walks.isTurning(), has(report, true), () -> seed + " turning " + chart);
    boolean proved = !walks.isWrong() && walks.points() > 0 && left.get() == 0;
    assertEquals(proved, report.proved(), () -> seed + " proved " + chart);
    assertEquals(proved, report.cost().isPresent(), () -> seed + " cost " + chart);
    report.cost().ifPresent(cost -> compare(seed, cost, symptom));
    count(report, walks);
  }

  /** Nothing waits for anything here but for what comes first, so no chart beats the optimum. */
  private void compare(long seed, ChartCost cost, Symptom symptom) {
    assertTrue(
        cost.cheapest().atLeast() <= cost.cheapest().weighted() + EXACT, () -> "seed " + seed);
    assertTrue(cost.minutes() <= cost.weighted() + EXACT, () -> "seed " + seed);
    assertEquals(Optional.empty(), cost.hazard());
    if (symptom.first().isEmpty()) {
      assertTrue(cost.difference() >= 0, () -> "seed " + seed + ": " + cost);
      cost.detour().ifPresent(detour -> assertTrue(detour.weighted() > 0, () -> "seed " + seed));
      show(cost.difference() == 0 ? "as cheap as can be" : "dearer");
    }
  }

  private static SortedSet<String> words(ChartReport report) {
    SortedSet<String> words = new TreeSet<>();
    report.findings().stream()
        .filter(finding -> finding.kind() != FindingKind.CHART_LOOP)
        .forEach(finding -> words.add(ChartOracle.word(finding.kind(), finding.places())));
    return words;
  }

  private static boolean has(ChartReport report, boolean witness) {
    return report.findings().stream()
        .filter(finding -> finding.kind() == FindingKind.CHART_LOOP)
        .anyMatch(finding -> !witness || finding.witness().isPresent());
  }

  private void count(ChartReport report, ChartOracle walks) {
    report.findings().stream().map(Finding::kind).distinct().forEach(kind -> show(kind.slug()));
    if (report.proved()) {
      show("proved");
    }
    if (walks.isCircular() && !walks.isTurning()) {
      show("circle nobody goes round");
    }
  }
}
