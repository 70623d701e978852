package io.faultwright.compile;

import java.util.stream.IntStream;

/** The builds a machine can be, and which tests of a symptom ask about something it may have. */
final class Machine {
  private final Candidates candidates;
  private final boolean[] existing;

  Machine(Candidates candidates, TestBook tests) {
    this.candidates = candidates;
    this.existing = new boolean[tests.size()];
    IntStream.range(0, tests.size())
        .forEach(test -> existing[test] = tests.existence(test).test(candidates));
  }

  Candidates candidates() {
    return candidates;
  }

  /** Whether some of the builds have what a test asks about. */
  boolean exists(int test) {
    return existing[test];
  }
}
