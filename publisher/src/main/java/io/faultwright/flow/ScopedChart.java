package io.faultwright.flow;

import io.faultwright.analysis.order.OrderCost;
import io.faultwright.model.Build;
import java.util.List;
import java.util.Optional;

/**
 * A flowchart with the equipment it is right for.
 *
 * @param builds the equipment
 * @param scope the same in words; empty where it is everything the handbook is about
 * @param chart the flowchart
 * @param cost of its order of checks; absent where there is no chart to work by, and where a
 *     trainer wrote it: a check says what that takes
 * @param course the same order of checks, to be followed by a program
 */
public record ScopedChart(
    List<Build> builds, String scope, Flowchart chart, Optional<OrderCost> cost, Course course) {
  public ScopedChart {
    builds = List.copyOf(builds);
  }
}
