package io.faultwright.adequacy;

import java.util.Collection;

/**
 * How many of some goals are shown.
 *
 * @param shown those that are
 * @param of all of them
 */
public record Tally(int shown, int of) {
  /** The tally of goals. */
  public static Tally of(Collection<GoalStatus> goals) {
    return new Tally((int) goals.stream().filter(GoalStatus::shown).count(), goals.size());
  }

  public Tally plus(Tally other) {
    return new Tally(shown + other.shown, of + other.of);
  }

  /** Whether nothing is left. */
  public boolean whole() {
    return shown == of;
  }

  /** Per cent, rounded down, so that 100 means all; 100 where there is nothing to show. */
  public int percent() {
    return of == 0 ? 100 : (int) (100L * shown / of);
  }
}
