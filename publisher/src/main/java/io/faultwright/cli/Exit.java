package io.faultwright.cli;

/** Exit codes; scripts rely on them. */
final class Exit {
  /** Nothing to mend. */
  static final int CLEAN = 0;

  /** Findings of severity error, failed cases, or something that could not be proved in time. */
  static final int FINDINGS = 1;

  /** Wrong use, or input that cannot be read. */
  static final int UNREADABLE = 2;

  /** A defect of the program. */
  static final int INTERNAL = 3;

  private Exit() {}
}
