package io.faultwright.layout;

import java.util.List;

/**
 * What a machine does in the course of time, to be drawn. All times are seconds from the beginning.
 *
 * @param title what is drawn, for those who do not see it
 * @param end up to when it is drawn; greater than zero
 * @param phases first to last; those that are over at once are left out
 * @param groups lanes by kind, such as outputs and inputs
 */
public record Timing(String title, double end, List<Stretch> phases, List<Group> groups) {
  public Timing {
    phases = List.copyOf(phases);
    groups = List.copyOf(groups);
  }

  /**
   * A phase.
   *
   * @param number by which the reader finds it in the table of phases
   * @param title as printed
   * @param stop whether the machine has stopped
   * @param from when it begins
   * @param to when the next begins
   */
  public record Stretch(int number, String title, boolean stop, double from, double to) {}

  /** Lanes of one kind, in the order in which they are drawn. */
  public record Group(String title, List<Lane> lanes) {
    public Group {
      lanes = List.copyOf(lanes);
    }
  }

  /**
   * A line that is high while something is so.
   *
   * @param title what is so
   * @param on when it is so, first to last
   * @param pushes moments of what is over at once
   */
  public record Lane(String title, List<On> on, List<Double> pushes) {
    public Lane {
      on = List.copyOf(on);
      pushes = List.copyOf(pushes);
    }
  }

  /** From a moment to another. */
  public record On(double from, double to) {}
}
