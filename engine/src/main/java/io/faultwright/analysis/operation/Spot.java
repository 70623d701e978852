package io.faultwright.analysis.operation;

import java.util.List;

/**
 * Where a machine is, its clocks left out.
 *
 * @param phase number of the phase
 * @param inputs states of the inputs
 * @param counts of the counters, as far as their limits tell them apart
 */
record Spot(int phase, List<Integer> inputs, List<Long> counts) {
  Spot {
    inputs = List.copyOf(inputs);
    counts = List.copyOf(counts);
  }

  int[] states() {
    return inputs.stream().mapToInt(Integer::intValue).toArray();
  }
}
