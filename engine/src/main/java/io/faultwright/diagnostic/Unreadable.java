package io.faultwright.diagnostic;

import java.util.List;

/** Thrown at the end of a phase that found problems; carries them all. */
public final class Unreadable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public Unreadable(List<Problem> problems) {
    super(problems.size() + " problem(s) in the input", null, false, false);
    this.problems = List.copyOf(problems);
  }

  public List<Problem> problems() {
    return problems;
  }
}
