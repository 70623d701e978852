package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.analysis.SmallBases;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The most ordinary situation of a set. */
class WitnessTest {
  private static final KnowledgeBase KB =
      SmallBases.read(
          """
          equipment:
            families: { fell: { title: Fell } }
            models: { F-1: { family: fell, options: {}, software: ["1.0", "2.0"] } }
          readings:
            s: { ask: Which s, values: [lo, ok, hi], normal: ok }
            n: { ask: Which n, values: [none, quiet, loud], normal: [quiet, none] }
            free: { ask: Which, values: [first, second] }
            t: { ask: T, unit: K, range: 0 to 40 }
            u: { ask: U, unit: K, range: 0 to 40 }
            gap: { title: Gap, difference: [t, u] }
          limits:
            t: { rows: [{ low: 11, high: 14 }] }
          """);

  private static final Space SPACE =
      Space.of(
          KB,
          KB.equipment().builds(),
          List.of(
              is("s", "lo"),
              is("n", "loud"),
              is("free", "first"),
              limits("t", Side.BELOW),
              above("gap", "1"),
              is("software", "2.0")),
          List.of());

  private static Situation of(Condition condition) {
    int there = SPACE.truth(condition).isTrue();
    return new Witness(SPACE).of(SPACE.diagrams().and(SPACE.consistent(), there));
  }

  private static void word(String expected, String reading, Condition condition) {
    assertEquals(new Value.Word(expected), of(condition).readings().get(reading));
  }

  @Test
  void normalWordsFirst() {
    word("ok", "s", Condition.ALWAYS);
    word("none", "n", Condition.ALWAYS);
    word("first", "free", Condition.ALWAYS);
    word("quiet", "n", not(is("n", "none")));
    word("lo", "s", not(is("s", "ok")));
  }

  @Test
  void withinLimitsFirst() {
    assertEquals(new Value.Number(Decimals.parse("12")), of(Condition.ALWAYS).readings().get("t"));
    assertEquals(
        new Value.Number(Decimals.parse("20")), of(limits("t", Side.ABOVE)).readings().get("t"));
  }

  /** What is computed is not observed, so it is not part of the situation. */
  @Test
  void onlyWhatIsObserved() {
    assertEquals(Set.of("s", "n", "free", "t", "u"), of(above("gap", "1")).readings().keySet());
  }

  @Test
  void theFirstOfTheBuildsThatAreLeft() {
    assertEquals("1.0", of(Condition.ALWAYS).equipment().get("software"));
    Situation later = of(is("software", "2.0"));
    assertEquals("2.0", later.equipment().get("software"));
    assertEquals("F-1", later.equipment().get("model"));
  }

  @Test
  void thereIsNoneOfNothing() {
    assertThrows(IllegalArgumentException.class, () -> new Witness(SPACE).of(Diagrams.NONE));
  }
}
