package io.faultwright.report;

import io.faultwright.diagnostic.Problem;
import java.util.List;
import java.util.Optional;

/**
 * Cases that were run, before they are printed.
 *
 * @param handbook title of the handbook
 * @param runs in the order asked for
 * @param problems rows of the input that could not be read
 */
public record RunReport(String handbook, List<CaseRun> runs, List<Problem> problems) {
  public RunReport {
    runs = List.copyOf(runs);
    problems = List.copyOf(problems);
  }

  public long passed() {
    return count(true);
  }

  public long failed() {
    return count(false);
  }

  private long count(boolean passed) {
    return runs.stream().filter(run -> run.passed().equals(Optional.of(passed))).count();
  }
}
