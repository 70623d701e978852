package io.faultwright.logbook;

import io.faultwright.resolve.Told;

/**
 * What an entry says, in the numbers of a program.
 *
 * @param told the same with ids
 * @param kind what it is
 * @param number of the input; else of the signal that was seen, as {@link Signals} numbers them
 * @param value the state of the input; else what was seen, as a number
 */
record Said(Told told, Kind kind, int number, int value) {
  /** What an entry can be. */
  enum Kind {
    /** Says nothing. */
    NOTHING,
    /** An input changes, or is pushed. */
    EVENT,
    /** Something was seen. */
    SEEN
  }

  /**
   * Whether an input came into a state or something was seen, so that saying it again is no news.
   */
  boolean lasts() {
    return kind == Kind.SEEN || kind == Kind.EVENT && value >= 0;
  }
}
