package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.ShownUnits;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The answers on the charts of the freezers in each system of units. */
class ShownUnitsTest {
  private static final Pattern SI = Pattern.compile("\\d (°C|K|bar)");
  private static final Pattern US = Pattern.compile("\\d[ \u00A0](°F|Δ°F|psi)");

  private static List<String> answers(KnowledgeBase knowledge) {
    return knowledge.symptoms().values().stream()
        .flatMap(
            symptom ->
                Demos.charts(knowledge, symptom).stream()
                    .flatMap(one -> one.chart().edges().stream()))
        .map(Edge::answer)
        .distinct()
        .toList();
  }

  private static List<String> answers(ShownUnits units) {
    return answers(Demos.shownIn(units).get(0));
  }

  private static Stream<String> with(Pattern unit, List<String> answers) {
    return answers.stream().filter(answer -> unit.matcher(answer).find());
  }

  @Test
  void asWrittenNothingIsConverted() {
    assertEquals(List.of(), with(US, answers(Demos.all().get(0))).toList());
    assertEquals(answers(Demos.all().get(0)), answers(ShownUnits.SI));
  }

  @Test
  void inUsUnitsNothingIsLeftInTheOthers() {
    List<String> answers = answers(ShownUnits.US);
    assertEquals(List.of(), with(SI, answers).toList());
    assertTrue(answers.contains("Above 149 °F"), answers::toString);
  }

  @Test
  void inBothTheOtherStandsInBrackets() {
    List<String> answers = answers(ShownUnits.BOTH);
    assertTrue(answers.contains("Above 65 °C (149\u00A0°F)"), answers::toString);
    assertFalse(with(SI, answers).toList().isEmpty());
    assertEquals(
        with(SI, answers).toList(), with(US, answers).filter(a -> a.contains("(")).toList());
  }
}
