package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import java.math.BigInteger;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * All situations that some conditions can tell apart, as cells on axes, and the diagram of those
 * that lie on a real machine.
 */
public final class Space {
  private final KnowledgeBase knowledge;
  private final List<Axis> axes;
  private final Map<Axis.Subject, Integer> positions;
  private final Map<String, Map<Build, LimitsCurve>> curves;
  private final Diagrams diagrams;
  private final int consistent;
  private final ConditionDiagrams conditions;
  private final boolean[] grouped;
  private final List<Coupling> couplings;

  Space(
      KnowledgeBase knowledge,
      List<Axis> axes,
      Map<Axis.Subject, Integer> positions,
      Map<String, Map<Build, LimitsCurve>> curves,
      Diagrams diagrams,
      int consistent,
      List<Coupling> couplings) {
    this.knowledge = knowledge;
    this.axes = axes;
    this.positions = positions;
    this.curves = curves;
    this.diagrams = diagrams;
    this.consistent = consistent;
    this.conditions = new ConditionDiagrams(this, diagrams);
    this.grouped = new boolean[axes.size()];
    for (int axis = 0; axis < grouped.length; axis++) {
      grouped[axis] = axes.get(axis).groupCount() < axes.get(axis).cells().size();
    }
    this.couplings = List.copyOf(couplings);
  }

  /**
   * The space of some conditions.
   *
   * @param builds the equipment in scope, at least one
   * @param counted conditions whose classes make situations distinguishable
   * @param others further conditions that are asked about but do not count
   */
  public static Space of(
      KnowledgeBase knowledge,
      List<Build> builds,
      List<Condition> counted,
      List<Condition> others) {
    return of(knowledge, builds, counted, others, Deadline.NEVER);
  }

  /**
   * The space of some conditions.
   *
   * @param deadline after which its diagrams throw {@link OutOfTime}
   */
  public static Space of(
      KnowledgeBase knowledge,
      List<Build> builds,
      List<Condition> counted,
      List<Condition> others,
      Deadline deadline) {
    return new SpaceBuilder(knowledge, builds, counted, others, deadline).build();
  }

  public KnowledgeBase knowledge() {
    return knowledge;
  }

  /** The axes in the order of the diagrams' levels; the first is the equipment. */
  public List<Axis> axes() {
    return axes;
  }

  public Diagrams diagrams() {
    return diagrams;
  }

  /** Level of an axis; empty where nothing in the space asks about the subject. */
  public Optional<Integer> position(Axis.Subject subject) {
    return Optional.ofNullable(positions.get(subject));
  }

  /** The axis about a subject that is known to be in the space. */
  public Axis axis(Axis.Subject subject) {
    return axes.get(positions.get(subject));
  }

  /** The cell combinations in which a real situation lies, as far as equipment and limits say. */
  public int consistent() {
    return consistent;
  }

  /** Where a condition is true and where it is false, worked out as it is asked for. */
  public Truth truth(Condition condition) {
    return new Truth(conditions, condition);
  }

  /** The diagram of situations whose cell on an axis is among those given. */
  public int literal(Axis.Subject subject, BitSet cells) {
    return diagrams.literal(positions.get(subject), cells);
  }

  /** Whether a computed reading can lack a value because a curve ends. */
  boolean mayLeaveCurves(String reading) {
    List<Build> builds =
        axes.get(0).cells().stream().map(cell -> ((Cell.Builds) cell).representative()).toList();
    return SpaceBuilder.mayLeaveCurves(knowledge, builds, reading);
  }

  /** Limits of a reading on a build. */
  LimitsCurve curve(String reading, Build build) {
    return curves.get(reading).get(build);
  }

  /** Groups of readings whose values depend on each other. */
  List<Coupling> couplings() {
    return couplings;
  }

  /** Whether every cell combination is a situation that can be told apart from the others. */
  boolean everyCellCounts() {
    return IntStream.range(0, grouped.length).noneMatch(axis -> grouped[axis]);
  }

  /** How many distinguishable situations a diagram holds. */
  public BigInteger distinguishable(int diagram) {
    return diagrams.count(coarse(diagram));
  }

  /** A diagram in which cells that no condition tells apart are gathered into the first of them. */
  public int coarse(int diagram) {
    int coarse = diagram;
    for (int axis = 0; axis < axes.size(); axis++) {
      coarse = coarsened(coarse, axis);
    }
    return coarse;
  }

  /** The diagram with each group of cells gathered into its first cell. */
  private int coarsened(int diagram, int axis) {
    if (!grouped[axis]) {
      return diagram;
    }
    List<Integer> groups = axes.get(axis).groups();
    return diagrams.change(diagram, axis, children -> gathered(children, groups));
  }

  private int[] gathered(int[] children, List<Integer> groups) {
    int[] result = new int[children.length];
    for (int cell = 0; cell < children.length; cell++) {
      int first = groups.indexOf(groups.get(cell));
      result[first] = diagrams.or(result[first], children[cell]);
    }
    return result;
  }
}
