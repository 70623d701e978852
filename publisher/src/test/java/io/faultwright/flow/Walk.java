package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.Decisions.Arm;
import io.faultwright.flow.Decisions.Asked;
import io.faultwright.flow.Decisions.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** Follows every path of a plan with the exact set of situations that take it. */
final class Walk {
  private final Plan plan;
  private final Diagrams diagrams;
  private final List<Integer> ends = new ArrayList<>();

  private Walk(SymptomSpace symptom, Plan plan) {
    this.plan = plan;
    this.diagrams = symptom.space().diagrams();
  }

  /**
   * Checks that the paths divide the possible situations.
   *
   * @param end told of every path: the situations that take it and the result on its end
   */
  static void every(SymptomSpace symptom, Plan plan, BiConsumer<Integer, Result> end) {
    Walk walk = new Walk(symptom, plan);
    walk.follow(plan.root(), symptom.possible(), end);
    int covered = Diagrams.NONE;
    for (int situations : walk.ends) {
      assertEquals(Diagrams.NONE, walk.diagrams.and(covered, situations), "two paths at once");
      covered = walk.diagrams.or(covered, situations);
    }
    assertEquals(symptom.possible(), covered, "situations without a path");
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
