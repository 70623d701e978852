package io.faultwright.pipeline;

import io.faultwright.diagnostic.Problem;
import io.faultwright.field.RowCounts;
import io.faultwright.input.CaseInput;
import io.faultwright.input.CaseInput.Item;
import io.faultwright.resolve.CaseIntake;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.GivenCases;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What came of an input whose cases were not kept.
 *
 * @param counts of its rows
 * @param notes what was left out of every row
 * @param problems of the first rows that could not be read
 * @param excerpt the lines of those rows
 * @param left how many further problems there are
 */
public record InputRun(
    RowCounts counts, List<Problem> notes, List<Problem> problems, Sources excerpt, long left) {
  public InputRun {
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }

  /**
   * Reads and judges one case after the other.
   *
   * @param path what to call the input in messages
   * @param judge says of a case whether it agrees with what it expects, if it expects something
   */
  static InputRun of(
      String path,
      CaseInput input,
      CaseIntake intake,
      Function<GivenCase, Optional<Boolean>> judge) {
    Kept kept = new Kept();
    RowCounts.Counter counter = new RowCounts.Counter();
    for (Optional<Item> item = input.next(); item.isPresent(); item = input.next()) {
      counter.read();
      GivenCases read =
          item.get()
              .entry()
              .map(intake::read)
              .orElseGet(() -> new GivenCases(List.of(), List.of()));
      read.cases().forEach(one -> counter.run(judge.apply(one)));
      if (read.cases().isEmpty()) {
        counter.skipped();
        kept.add(item.get(), read.problems());
      }
    }
    return new InputRun(
        counter.counts(),
        input.notes(),
        kept.problems,
        Sources.excerpt(path, kept.lines),
        kept.left);
  }

  /** Problems with the lines they stand on, as long as there are not many. */
  private static final class Kept {
    private static final int MOST = 1_000;

    private final List<Problem> problems = new ArrayList<>();
    private final SortedMap<Integer, String> lines = new TreeMap<>();
    private long left;

    void add(Item row, List<Problem> found) {
      if (problems.size() >= MOST) {
        left += row.problems().size() + found.size();
      } else {
        problems.addAll(row.problems());
        problems.addAll(found);
        for (int i = 0; i < row.lines().size(); i++) {
          lines.put(row.line() + i, row.lines().get(i));
        }
      }
    }
  }
}
