package io.faultwright.handin;

import io.faultwright.diagnostic.Problem;

/**
 * Something that the trainer should know about what was handed in.
 *
 * @param kind what became of it
 * @param problem where it stands and what it is
 */
public record Remark(Kind kind, Problem problem) {
  /** What became of it. */
  public enum Kind {
    /** It is not graded. */
    REFUSED("refused"),
    /** It is not graded until the trainer decides. */
    DOUBTFUL("doubtful"),
    /** It is graded, and does not count as passed. */
    LATE("late"),
    /** It was there already, and is counted once. */
    REPEATED("repeated"),
    /** It is graded; something about it cannot be checked. */
    UNCHECKED("unchecked");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** Whether somebody has to do something about it. */
    public boolean isSerious() {
      return this == REFUSED || this == DOUBTFUL;
    }
  }
}
