package io.faultwright.analysis.space;

import io.faultwright.model.Answer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntBinaryOperator;

/**
 * Situations whose outcome depends on a figure that the limits tables do not have: filling the
 * missing side in one way or another would change what the technician is told.
 */
public final class MissingLimits {
  private final SymptomSpace symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final List<Axis> axes;
  private final List<Integer> outcomes;

  public MissingLimits(SymptomSpace symptom) {
    this.symptom = symptom;
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.axes = withoutFigure();
    this.outcomes = axes.isEmpty() ? List.of() : outcomes();
  }

  /** Where each answer and each referral is given, whether or not a real situation lies there. */
  private List<Integer> outcomes() {
    List<Integer> outcomes = new ArrayList<>();
    int open = Diagrams.ALL;
    for (var first : symptom.symptom().first()) {
      Truth truth = space.truth(first.when());
      outcomes.add(diagrams.minus(open, truth.mayBeTrue()));
      open = diagrams.and(open, truth.isTrue());
    }
    SortedMap<Answer, Integer> answers = new TreeMap<>();
    for (var rule : symptom.symptom().rules().values()) {
      int fires = diagrams.and(open, symptom.fires(rule.id()));
      rule.conclusion().answers().forEach(answer -> answers.merge(answer, fires, diagrams::or));
    }
    outcomes.addAll(answers.values());
    return outcomes;
  }

  /** Possible situations that no rule can decide because a figure is missing. */
  public int undecided() {
    int undecided = Diagrams.NONE;
    for (int outcome : outcomes) {
      int best = outcome;
      int worst = outcome;
      for (Axis axis : axes) {
        best = opened(best, axis, Diagrams.NONE, diagrams::or);
        worst = opened(worst, axis, Diagrams.ALL, diagrams::and);
      }
      undecided = diagrams.or(undecided, diagrams.minus(best, worst));
    }
    return diagrams.and(undecided, symptom.possible());
  }

  /** For each reading whose missing figure matters: the possible situations in which it does. */
  public SortedMap<String, Integer> byReading() {
    SortedMap<String, Integer> result = new TreeMap<>();
    for (Axis axis : axes) {
      int situations = diagrams.and(mattering(axis), symptom.possible());
      if (situations != Diagrams.NONE) {
        result.put(((Axis.OfSide) axis.subject()).reading(), situations);
      }
    }
    return result;
  }

  private int mattering(Axis axis) {
    int matters = Diagrams.NONE;
    for (int outcome : outcomes) {
      int open = outcome;
      for (Axis other : axes) {
        open = other == axis ? open : opened(open, other, Diagrams.NONE, diagrams::or);
      }
      int best = opened(open, axis, Diagrams.NONE, diagrams::or);
      int worst = opened(open, axis, Diagrams.ALL, diagrams::and);
      matters = diagrams.or(matters, diagrams.minus(best, worst));
    }
    return matters;
  }

  /** The limits for which some possible situation has no figure. */
  private List<Axis> withoutFigure() {
    BitSet[] occurring = diagrams.occurring(symptom.possible());
    return space.axes().stream()
        .filter(axis -> axis.subject() instanceof Axis.OfSide)
        .filter(axis -> occurring[space.position(axis.subject()).orElseThrow()].get(missing(axis)))
        .toList();
  }

  private static int missing(Axis axis) {
    return axis.where(cell -> cell instanceof Cell.NoFigure).nextSetBit(0);
  }

  /** The diagram with "no figure" taken as the three sides joined. */
  private int opened(int diagram, Axis axis, int start, IntBinaryOperator join) {
    BitSet sides = axis.sides();
    int missing = missing(axis);
    return diagrams.change(
        diagram,
        space.position(axis.subject()).orElseThrow(),
        children -> {
          int[] changed = children.clone();
          changed[missing] = sides.stream().map(side -> children[side]).reduce(start, join);
          return changed;
        });
  }
}
