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

  Following(Diagrams diagrams, Decisions decisions, List<Question> questions, Problem problem) {
    this.diagrams = diagrams;
    this.decisions = decisions;
    this.questions = questions;
    this.problem = problem;
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
    if (!first.isEmpty() && !comesFirst || !comesFirst && !may(check, set, way)) {
      return Optional.empty();
    }
    Spent spent = price(check, set, way);
    Way then = way.after(position, check, comesFirst);
    int unanswered = set;
    for (Arm arm : asked.arms()) {
      BitSet cells = asked.question().cells(arm.options());
      int part = diagrams.and(set, diagrams.literal(asked.question().axis(), cells));
      unanswered = diagrams.minus(unanswered, part);
      if (part != Diagrams.NONE) {
        Optional<Spent> more = spent(arm.next(), part, then);
        if (more.isEmpty()) {
          return Optional.empty();
        }
        spent = spent.plus(more.get());
      }
    }
    return unanswered == Diagrams.NONE ? Optional.of(spent) : Optional.empty();
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
