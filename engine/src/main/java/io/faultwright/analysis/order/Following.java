package io.faultwright.analysis.order;

import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Decisions.Told;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.sequence.Check;
import io.faultwright.sequence.Outlay;
import io.faultwright.sequence.Problem;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Follows decisions through a set of situations: are they right there, and what do they cost? */
final class Following {
  private final Diagrams diagrams;
  private final Decisions decisions;
  private final List<Question> questions;
  private final Problem problem;
  private final BitSet hazardous;

  /**
   * @param hazardous questions that are not to be asked where they tell nothing
   */
  Following(
      Diagrams diagrams,
      Decisions decisions,
      List<Question> questions,
      Problem problem,
      BitSet hazardous) {
    this.diagrams = diagrams;
    this.decisions = decisions;
    this.questions = questions;
    this.problem = problem;
    this.hazardous = hazardous;
  }

  /** The cost; absent where they end at a wrong result, or ask what may not be asked there. */
  Optional<Spent> spent(int number, int set, Way way) {
    return decisions.get(number) instanceof Asked asked
        ? spent(asked, set, way)
        : told(((Told) decisions.get(number)).result().situations(), set);
  }

  private Optional<Spent> told(int result, int set) {
    return diagrams.within(set, result) ? Optional.of(Spent.NOTHING) : Optional.empty();
  }

  private Optional<Spent> spent(Asked asked, int set, Way way) {
    int position = questions.indexOf(asked.question());
    Check check = problem.checks().get(position);
    BitSet first = problem.situations().first(set);
    boolean comesFirst = first.get(position);
    boolean forNothing =
        hazardous.get(position) && problem.situations().parts(set, position).length < 2;
    if (forNothing || !comesFirst && (!first.isEmpty() || !may(check, set, way))) {
      return Optional.empty();
    }
    Spent spent = price(check, set, way);
    Way then = way.after(position, check, comesFirst);
    int unanswered = set;
    for (Arm arm : asked.arms()) {
      for (int part : parts(asked.question(), arm, set)) {
        unanswered = diagrams.minus(unanswered, part);
        Optional<Spent> more = spent(arm.next(), part, then);
        if (more.isEmpty()) {
          return Optional.empty();
        }
        spent = spent.plus(more.get());
      }
    }
    return unanswered == Diagrams.NONE ? Optional.of(spent) : Optional.empty();
  }

  /** What each answer of an arm leaves, where it can be given. */
  private int[] parts(Question question, Arm arm, int set) {
    return arm.options().stream()
        .map(
            option ->
                diagrams.and(
                    set, diagrams.literal(question.axis(), question.options().get(option))))
        .filter(part -> part != Diagrams.NONE)
        .toArray();
  }

  private boolean may(Check check, int set, Way way) {
    boolean ready =
        check.after().stream()
            .allMatch(
                one -> way.asked().get(one) || problem.situations().parts(set, one).length < 2);
    return ready && (check.late() || !way.late());
  }

  private Spent price(Check check, int set, Way way) {
    double likelihood = 0;
    for (double one : problem.situations().results(set)) {
      likelihood += one;
    }
    double minutes = 0;
    double weighted = 0;
    BitSet outlays = check.outlays();
    for (int i = outlays.nextSetBit(0); i >= 0; i = outlays.nextSetBit(i + 1)) {
      Outlay outlay = problem.outlays().get(i);
      minutes += way.paid().get(i) ? 0 : outlay.minutes();
      weighted += way.paid().get(i) ? 0 : outlay.weighted();
    }
    return new Spent(minutes * likelihood, weighted * likelihood);
  }
}
