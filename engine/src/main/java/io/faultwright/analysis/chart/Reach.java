package io.faultwright.analysis.chart;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SortedMap;
import java.util.TreeMap;

/** Which situations come to each step of a chart; where two answers hold, both are taken. */
final class Reach {
  private final ChartSpace space;
  private final Diagrams diagrams;
  private final SortedMap<String, Integer> reached = new TreeMap<>();

  Reach(ChartSpace space) {
    this.space = space;
    this.diagrams = space.diagrams();
    Chart chart = space.chart();
    chart.steps().keySet().forEach(step -> reached.put(step, Diagrams.NONE));
    reached.put(chart.start(), space.start());
    Deque<String> open = new ArrayDeque<>();
    open.add(chart.start());
    while (!open.isEmpty()) {
      Step step = chart.steps().get(open.remove());
      step.branches().forEach(branch -> follow(step, branch, open));
    }
  }

  /** Sends what takes an answer on to the next step, which is looked at again if it gains. */
  private void follow(Step step, Branch branch, Deque<String> open) {
    branch
        .target()
        .next()
        .ifPresent(
            next -> {
              int before = at(next);
              int after = diagrams.or(before, along(step, branch));
              if (after != before) {
                reached.put(next, after);
                open.add(next);
              }
            });
  }

  /** The situations that come to a step. */
  int at(String step) {
    return reached.get(step);
  }

  /** The situations that come to a step and take one of its answers. */
  int along(Step step, Branch branch) {
    return diagrams.and(at(step.id()), space.where(branch));
  }

  /** The situations that come to a step and take none of its answers. */
  int stuck(Step step) {
    int left = at(step.id());
    for (Branch branch : step.branches()) {
      left = diagrams.minus(left, space.where(branch));
    }
    return left;
  }
}
