package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.order.CheckOrder;
import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Decisions.Told;
import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.order.ScopedOrder;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** Follows every path of a plan with the exact set of situations that take it. */
final class Walk {
  private final CheckOrder plan;
  private final Diagrams diagrams;
  private final List<Integer> ends = new ArrayList<>();

  private Walk(SymptomSpace symptom, CheckOrder plan) {
    this.plan = plan;
    this.diagrams = symptom.space().diagrams();
  }

  /**
   * Checks that the paths of a chart divide the situations it is for.
   *
   * @param end told of every path: the situations that take it and the result on its end
   */
  static void every(SymptomSpace symptom, ScopedOrder scope, BiConsumer<Integer, Result> end) {
    Walk walk = new Walk(symptom, scope.checks().orElseThrow());
    walk.follow(walk.plan.root(), scope.situations(), end);
    int covered = Diagrams.NONE;
    for (int situations : walk.ends) {
      assertEquals(Diagrams.NONE, walk.diagrams.and(covered, situations), "two paths at once");
      covered = walk.diagrams.or(covered, situations);
    }
    assertEquals(scope.situations(), covered, "situations without a path");
  }

  private void follow(int number, int situations, BiConsumer<Integer, Result> end) {
    if (plan.decisions().get(number) instanceof Told told) {
      ends.add(situations);
      end.accept(situations, told.result());
      return;
    }
    Asked asked = (Asked) plan.decisions().get(number);
    assertTrue(asked.arms().size() > 1, "a check with one answer");
    for (Arm arm : asked.arms()) {
      Question question = asked.question();
      int answer = diagrams.literal(question.axis(), question.cells(arm.options()));
      int part = diagrams.and(situations, answer);
      if (part != Diagrams.NONE) {
        follow(arm.next(), part, end);
      }
    }
    assertNotEquals(Diagrams.NONE, situations, "a check that no situation reaches");
  }
}
