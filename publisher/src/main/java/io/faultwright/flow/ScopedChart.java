package io.faultwright.flow;

import io.faultwright.model.Build;
import java.util.List;

/**
 * A flowchart with the equipment it is right for.
 *
 * @param builds the equipment
 * @param scope the same in words; empty where it is everything the handbook is about
 * @param chart the flowchart
 */
public record ScopedChart(List<Build> builds, String scope, Flowchart chart) {
  public ScopedChart {
    builds = List.copyOf(builds);
  }
}
