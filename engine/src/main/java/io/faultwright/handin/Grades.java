package io.faultwright.handin;

import io.faultwright.grading.QuizReport;
import java.util.List;
import java.util.Optional;

/**
 * A quiz that was graded.
 *
 * @param quiz as it was given out
 * @param entries who is graded, by number
 * @param missing numbers of those of whom nothing could be graded
 * @param report how good the items are; nothing where nobody is graded
 * @param remarks what the trainer should know, in the order of the files
 */
public record Grades(
    IssuedQuiz quiz,
    List<Entry> entries,
    List<Integer> missing,
    Optional<QuizReport> report,
    List<Remark> remarks) {
  public Grades {
    entries = List.copyOf(entries);
    missing = List.copyOf(missing);
    remarks = List.copyOf(remarks);
  }

  /** Whether somebody has to look at something. */
  public boolean isDoubtful() {
    return remarks.stream().anyMatch(remark -> remark.kind().isSerious());
  }

  /** Numbers of those who were in time: they take part in a draw. */
  public List<String> drawable() {
    return entries.stream()
        .filter(entry -> !entry.late())
        .map(entry -> Integer.toString(entry.participant()))
        .toList();
  }
}
