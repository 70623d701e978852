package io.faultwright.analysis.space;

/** A set of situations that is worked out step by step, with bounds while it is not yet whole. */
public interface Bounded {
  /**
   * The set.
   *
   * @throws OutOfTime at the deadline; what was worked out until then is kept
   */
  int whole();

  /** Situations that are surely in it: all of them once it is whole. */
  int known();

  /** At least this part of all cell combinations is in it. */
  double atLeast();

  /** At most this part of all cell combinations is in it. */
  double atMost();
}
