package io.faultwright.input;

import io.faultwright.diagnostic.Problem;
import io.faultwright.syntax.Node.Entry;
import java.util.List;
import java.util.Optional;

/** Cases from outside, one after the other. */
public interface CaseInput {
  /** The next case, or row that is none; empty at the end. */
  Optional<Item> next();

  /** What is left out of every case, such as a column that means nothing here. */
  List<Problem> notes();

  /**
   * A case as YAML would say it, or what keeps a row from being one.
   *
   * @param entry the case; empty where there are problems
   * @param line where it begins, from 1
   * @param lines the text of a row of a table; none where the file is kept anyway
   * @param problems of the row
   */
  record Item(Optional<Entry> entry, int line, List<String> lines, List<Problem> problems) {
    public Item {
      lines = List.copyOf(lines);
      problems = List.copyOf(problems);
    }
  }
}
