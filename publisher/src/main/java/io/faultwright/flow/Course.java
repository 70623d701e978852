package io.faultwright.flow;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * The order of checks of a chart with the conditions of its answers, to be followed by a program.
 *
 * @param steps each known by its position; none where there is no chart to work by
 * @param start position of the first step
 */
public record Course(List<Step> steps, int start) {
  /** No chart to work by. */
  public static final Course NONE = new Course(List.of(), 0);

  public Course {
    steps = List.copyOf(steps);
  }

  /** A check or an end. */
  public sealed interface Step {
    /** Id of its node of the flowchart. */
    String node();
  }

  /**
   * A check.
   *
   * @param node id of the node of the flowchart that asks it; some steps of a chart that a trainer
   *     wrote are not drawn, and no node has their id
   * @param subject id of the reading, or the equipment fact, that is looked at
   * @param limits whether a reading is held against its limits
   * @param arms its answers
   */
  public record Ask(String node, String subject, boolean limits, List<Arm> arms) implements Step {
    public Ask {
      arms = List.copyOf(arms);
    }
  }

  /**
   * An end.
   *
   * @param node id of the node of the flowchart that says so
   * @param answers what the technician is told
   */
  public record End(String node, SortedSet<Answer> answers) implements Step {
    public End {
      answers = Sorted.set(answers);
    }
  }

  /**
   * Answers that lead on to one step.
   *
   * @param picks any of these is such an answer
   * @param next position of the step
   */
  public record Arm(List<Pick> picks, int next) {
    public Arm {
      picks = List.copyOf(picks);
    }
  }

  /** What an answer can be. */
  public sealed interface Pick {}

  /** The condition holds. */
  public record Meets(Condition condition) implements Pick {}

  /** The machine is one of these. */
  public record IsOneOf(List<Build> builds) implements Pick {
    public IsOneOf {
      builds = List.copyOf(builds);
    }
  }

  /** The machine does not have the reading, or with limits, one that these follow. */
  public record IsAbsent(String reading, boolean limits) implements Pick {}

  /** The reading's limits have no figure here. */
  public record HasNoFigure(String reading) implements Pick {}
}
