package io.faultwright.review;

import java.util.List;
import java.util.Optional;

/**
 * When the meaning of something last changed.
 *
 * @param state what is known
 * @param commit the commit that changed it; where {@link State#BEFORE} the oldest looked at
 * @param parts what of it changed then, as in {@code limits suction-pressure}; empty where all of
 *     it is new, or nothing is known
 */
public record LastChange(State state, Optional<Commit> commit, List<String> parts) {
  /** There is no history to ask. */
  public static final LastChange NO_HISTORY =
      new LastChange(State.NO_HISTORY, Optional.empty(), List.of());

  /** The last commit has another meaning. */
  public static final LastChange NOT_COMMITTED =
      new LastChange(State.NOT_COMMITTED, Optional.empty(), List.of());

  public LastChange {
    parts = List.copyOf(parts);
  }

  /** What is known. */
  public enum State {
    NO_HISTORY,
    NOT_COMMITTED,
    /** It came into being, or changed, with the commit. */
    COMMITTED,
    /** It has not changed since the commit; what was before was not looked at. */
    BEFORE
  }

  /**
   * A commit; who made it is left out.
   *
   * @param id the first digits
   * @param date when it was written, ISO 8601, in the zone of its writer
   * @param summary first line of its message
   */
  public record Commit(String id, String date, String summary) {}
}
