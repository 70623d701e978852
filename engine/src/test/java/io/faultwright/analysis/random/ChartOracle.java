package io.faultwright.analysis.random;

import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.End;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** What is wrong with a chart, by walking single points through it. */
final class ChartOracle {
  private final Chart chart;
  private final Oracle oracle;
  private final SortedSet<String> found = new TreeSet<>();
  private final SortedSet<String> visited = new TreeSet<>();
  private boolean turning;
  private int points;

  ChartOracle(KnowledgeBase knowledge, Chart chart) {
    this.chart = chart;
    this.oracle = new Oracle(knowledge, knowledge.symptoms().get(chart.symptom()));
  }

  /** A kind of finding with the places where it stands. */
  static String word(FindingKind kind, List<Place> places) {
    return kind.slug() + " " + places.stream().map(Place::line).toList();
  }

  /** Walks a possible point that is not left to a missing figure. */
  void walk(Point point) {
    if (oracle.holds(chart.applies(), point)) {
      points++;
      walk(chart.start(), point, new ArrayList<>());
    }
  }

  private void walk(String id, Point point, List<String> path) {
    if (path.contains(id)) {
      turning = true;
      return;
    }
    visited.add(id);
    path.add(id);
    Step step = chart.steps().get(id);
    List<Branch> taken =
        step.branches().stream().filter(branch -> oracle.holds(branch.when(), point)).toList();
    if (taken.isEmpty()) {
      found.add(word(FindingKind.CHART_ANSWER_MISSING, List.of(step.place())));
    }
    for (Branch branch : taken) {
      compare(branch, taken);
      branch.target().next().ifPresent(next -> walk(next, point, path));
      if (branch.target() instanceof End end && !end.answers().equals(said(point))) {
        found.add(word(FindingKind.CHART_DIFFERS, List.of(branch.place())));
      }
    }
    path.remove(path.size() - 1);
  }

  private void compare(Branch branch, List<Branch> taken) {
    for (Branch other : taken) {
      if (branch.place().line() < other.place().line() && !branch.target().equals(other.target())) {
        found.add(word(FindingKind.CHART_ANSWERS_OVERLAP, List.of(branch.place(), other.place())));
      }
    }
  }

  private SortedSet<Answer> said(Point point) {
    Oracle.Fate fate = oracle.fate(point);
    return fate.referred() ? oracle.referral(point) : oracle.answers(fate);
  }

  /** Everything but circles. */
  SortedSet<String> found() {
    SortedSet<String> all = new TreeSet<>(found);
    chart.steps().values().stream()
        .filter(step -> !visited.contains(step.id()))
        .forEach(step -> all.add(word(FindingKind.CHART_STEP_UNREACHED, List.of(step.place()))));
    return all;
  }

  /** Whether a point goes round for ever. */
  boolean isTurning() {
    return turning;
  }

  /** Whether the arrows lead back anywhere. */
  boolean isCircular() {
    return chart.steps().keySet().stream().anyMatch(id -> leads(id, id, new TreeSet<>()));
  }

  private boolean leads(String from, String to, SortedSet<String> seen) {
    return chart.steps().get(from).branches().stream()
        .flatMap(branch -> branch.target().next().stream())
        .anyMatch(next -> next.equals(to) || seen.add(next) && leads(next, to, seen));
  }

  int points() {
    return points;
  }

  /** Whether something is wrong that is more than superfluous. */
  boolean isWrong() {
    return !found.isEmpty() || isCircular();
  }
}
