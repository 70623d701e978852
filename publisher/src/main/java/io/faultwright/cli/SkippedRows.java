package io.faultwright.cli;

import io.faultwright.field.RowCounts;
import io.faultwright.pipeline.InputRun;
import io.faultwright.report.ProblemText;

/** Says on standard error what was left out of an input, and why. */
final class SkippedRows {
  private final Console console;

  SkippedRows(Console console) {
    this.console = console;
  }

  /** The columns that are left out, then the rows with their reasons. */
  void say(InputRun run) {
    notes(run);
    if (!run.problems().isEmpty()) {
      console.say(text(run).skipped(run.problems()));
    }
    if (run.left() > 0) {
      console.say(run.left() + " further problems are not shown\n");
    }
  }

  /** The columns that are left out. */
  void notes(InputRun run) {
    console.say(text(run).notes(run.notes()));
  }

  private ProblemText text(InputRun run) {
    return new ProblemText(run.excerpt(), console.errInk());
  }

  /** The exit code that such counts call for. */
  static int code(RowCounts counts) {
    if (counts.skipped() > 0) {
      return Exit.UNREADABLE;
    }
    return counts.disagreed() > 0 ? Exit.FINDINGS : Exit.CLEAN;
  }
}
