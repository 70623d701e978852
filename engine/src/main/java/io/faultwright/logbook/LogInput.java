package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import java.util.List;
import java.util.Optional;

/** A log, entry by entry, first to last. */
public interface LogInput {
  /**
   * The next entry; empty at the end.
   *
   * @throws Unreadable with what could not be read; at the end at the latest
   */
  Optional<Entry> next();

  /** What is left out of the log, such as a column that means nothing here. */
  List<Problem> notes();

  /**
   * Whether what was seen once holds until the log says something else: so in what a controller
   * writes, not in what a person notes.
   */
  boolean holds();
}
