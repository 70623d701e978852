package io.faultwright.diagnostic;

import io.faultwright.source.Sources;
import java.util.List;
import java.util.Optional;

/** Thrown at the end of a phase that found problems; carries them all. */
public final class Unreadable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;
  private final transient Optional<Sources> excerpt;

  public Unreadable(List<Problem> problems) {
    this(problems, Optional.empty());
  }

  /**
   * For a file of which only some lines are known.
   *
   * @param excerpt the lines the problems stand on
   */
  public Unreadable(List<Problem> problems, Sources excerpt) {
    this(problems, Optional.of(excerpt));
  }

  private Unreadable(List<Problem> problems, Optional<Sources> excerpt) {
    super(problems.size() + " problem(s) in the input", null, false, false);
    this.problems = List.copyOf(problems);
    this.excerpt = excerpt;
  }

  public List<Problem> problems() {
    return problems;
  }

  /** The lines the problems stand on, where whoever catches this does not have the file. */
  public Optional<Sources> excerpt() {
    return excerpt;
  }
}
