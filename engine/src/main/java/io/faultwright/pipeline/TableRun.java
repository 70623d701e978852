package io.faultwright.pipeline;

import io.faultwright.diagnostic.Problem;
import io.faultwright.input.CaseTable.Item;
import io.faultwright.report.CaseRun;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of a table whose cases were not kept.
 *
 * @param failed how many cases did not come out as expected
 * @param problems of the first rows that could not be read
 * @param excerpt the lines of those rows
 * @param left how many further problems there are
 */
public record TableRun(long failed, List<Problem> problems, Sources excerpt, long left) {
  public TableRun {
    problems = List.copyOf(problems);
  }

  /** Counts while the table is run. */
  static final class Tally {
    private static final int MOST = 1_000;

    private final String path;
    private final List<Problem> problems = new ArrayList<>();
    private final SortedMap<Integer, String> lines = new TreeMap<>();
    private long failed;
    private long left;

    Tally(String path) {
      this.path = path;
    }

    CaseRun count(CaseRun run) {
      failed += run.passed().equals(Optional.of(false)) ? 1 : 0;
      return run;
    }

    /** Keeps the problems of a row with its lines; only counts them once there are many. */
    void keep(Item row, List<Problem> found) {
      if (problems.size() >= MOST) {
        left += found.size();
      } else if (!found.isEmpty()) {
        problems.addAll(found);
        for (int i = 0; i < row.lines().size(); i++) {
          lines.put(row.line() + i, row.lines().get(i));
        }
      }
    }

    TableRun result() {
      return new TableRun(failed, problems, Sources.excerpt(path, lines), left);
    }
  }
}
