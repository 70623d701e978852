package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Interval;
import java.util.List;

/** One of the finitely many classes into which an axis is cut. */
public sealed interface Cell {
  /** Builds that nothing in the space tells apart. */
  record Builds(List<Build> builds) implements Cell {
    public Builds {
      builds = List.copyOf(builds);
    }

    /** The build that stands for the others. */
    public Build representative() {
      return builds.get(0);
    }
  }

  /** One value of a choice. */
  record Word(String value) implements Cell {}

  /** A stretch of a quantity, in its reading's unit, within its range. */
  record Stretch(Interval interval) implements Cell {
    /** Whether it ends before a bounded interval begins. */
    boolean isBelow(Interval other) {
      return Cut.end(interval).compareTo(Cut.start(other)) <= 0;
    }

    /** Whether it begins after a bounded interval has ended. */
    boolean isAbove(Interval other) {
      return Cut.start(interval).compareTo(Cut.end(other)) >= 0;
    }
  }

  /** The place of a quantity against its limits. */
  record SideOf(Side side) implements Cell {}

  /** The reading cannot be taken, or its limits follow one that cannot. */
  record NotTaken() implements Cell {}

  /** The reading, or the one its limits follow, does not exist on this equipment. */
  record Absent() implements Cell {}

  /** The limits table has no figure for this equipment and driver. */
  record NoFigure() implements Cell {}
}
