package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.order.ScopedOrder;
import io.faultwright.analysis.order.ScopedOrders;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every path of every chart of the demonstration handbooks ends where the rules end, judged twice:
 * by the decision diagrams for all situations of the path, and by Drools for one of them. The
 * charts of a symptom together have a path for every possible situation.
 */
class PlanSoundnessTest {
  static Stream<Arguments> symptoms() {
    return Demos.all().stream()
        .flatMap(
            knowledge ->
                knowledge.symptoms().values().stream()
                    .map(symptom -> Arguments.of(symptom.id(), knowledge, symptom)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("symptoms")
  void everyPathEndsWhereTheRulesEnd(String id, KnowledgeBase knowledge, Symptom symptom) {
    SymptomSpace space = SymptomSpace.of(knowledge, symptom);
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    Witness witness = new Witness(space.space());
    int covered = Diagrams.NONE;
    for (ScopedOrder scope : ScopedOrders.of(space)) {
      Walk.every(
          space,
          scope,
          (situations, result) -> {
            assertTrue(space.space().diagrams().within(situations, result.situations()));
            assertEquals(result.answers(), runner.verdict(id, witness.of(situations)).answers());
          });
      assertEquals(Diagrams.NONE, space.space().diagrams().and(covered, scope.situations()));
      covered = space.space().diagrams().or(covered, scope.situations());
    }
    assertEquals(space.possible(), covered, "situations without a chart");
  }
}
