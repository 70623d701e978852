package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.flow.Order.Priority;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every path of every chart of the demonstration handbooks ends where the rules end, judged twice:
 * by the decision diagrams for all situations of the path, and by Drools for one of them.
 */
class PlanSoundnessTest {
  static Stream<Arguments> symptoms() {
    return Demos.all().stream()
        .flatMap(
            knowledge ->
                knowledge.symptoms().values().stream()
                    .flatMap(
                        symptom ->
                            Stream.of(Priority.values())
                                .map(
                                    priority ->
                                        Arguments.of(symptom.id(), priority, knowledge, symptom))));
  }

  @ParameterizedTest(name = "{0} by {1}")
  @MethodSource("symptoms")
  void everyPathEndsWhereTheRulesEnd(
      String id, Priority priority, KnowledgeBase knowledge, Symptom symptom) {
    SymptomSpace space = SymptomSpace.of(knowledge, symptom);
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    Witness witness = new Witness(space.space());
    Walk.every(
        space,
        ChartBuilder.plan(space, priority).orElseThrow(),
        (situations, result) -> {
          assertTrue(space.space().diagrams().within(situations, result.situations()));
          assertEquals(result.answers(), runner.verdict(id, witness.of(situations)).answers());
        });
  }
}
