package io.faultwright.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.Caution;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Superheat and its kin from written knowledge bases, through Drools. */
class SaturationReadingTest {
  private static final KnowledgeBase KB =
      Resolver.resolve(
          new Sources(
              List.of(
                  SourceFile.of(
                      "handbook.yaml",
                      """
                      handbook: { title: T, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en, disclaimer: D. }
                      equipment:
                        families: { tarn: { title: Tarn } }
                        models:
                          T-1: { family: tarn, refrigerant: R-404A }
                          T-2: { family: tarn, refrigerant: R-290 }
                      readings:
                        suction: { ask: Which, unit: bar(g), range: -1 to 8, access: refrigerant-circuit }
                        liquid: { ask: Which, unit: kPa(a), range: 100 to 3000 }
                        line: { ask: How warm, unit: °C, range: -40 to 60 }
                        altitude: { ask: How high, unit: m, range: 0 to 3000, assume: 0 }
                        superheat: { superheat: { line: line, pressure: suction, altitude: altitude } }
                        subcooling: { subcooling: { line: line, pressure: liquid } }
                      faults:
                        f: { title: F, remedy: [Mend it.], verify: [Look.] }
                        g: { title: G, remedy: [Mend it.], verify: [Look.] }
                      symptoms:
                        s:
                          title: S
                          rules:
                            little: { when: { superheat: below 8.02 K }, conclude: f, because: B. }
                            much: { when: { superheat: at least 8.02 K }, conclude: g, because: B. }
                      cases:
                        right: { symptom: s, given: { model: T-1, suction: 198.675 kPa(g), line: -12 }, expect: f }
                        high-up: { symptom: s, given: { model: T-1, suction: 198.675 kPa(g), line: -12, altitude: 1000 m }, expect: g }
                        which: { symptom: s, given: { suction: 2, line: -12 }, expect: nothing yet }
                        vacuum: { symptom: s, given: { model: T-1, suction: -0.9, line: -12 }, expect: nothing yet }
                        liquid: { symptom: s, given: { model: T-1, liquid: 1829.543, line: 35 }, expect: nothing yet }
                      """))));

  private static Trace run(String id) {
    Case recorded = KB.cases().get(id);
    return new Runner(KB, RuleCompiler.compile(KB)).run("s", recorded.given());
  }

  private static double computed(String id, String reading) {
    Value value = new DerivedValues(KB).of(KB.cases().get(id).given()).get(reading);
    return ((Value.Number) value).amount().doubleValue();
  }

  /**
   * R-404A at 300.0 kPa absolute has its dew point at -20.016 °C, and at 1829.543 kPa its bubble
   * point at 40.000 °C (Lemmon, Int. J. Thermophys. 24(4), 2003); 8.625 K would be the bubble line.
   */
  @Test
  void superheatIsOverTheDewPointSubcoolingUnderTheBubblePoint() {
    assertEquals(8.016, computed("right", "superheat"), 0.008);
    assertEquals(5.000, computed("liquid", "subcooling"), 0.005);
  }

  /** The air at 1000 m presses with 89.875 kPa (standard atmosphere), so the gauge shows more. */
  @Test
  void theAltitudeShiftsTheZeroOfTheGauge() {
    assertEquals(Set.of(new Answer.OfFault("f")), run("right").answers());
    assertEquals(Set.of(new Answer.OfFault("g")), run("high-up").answers());
  }

  @Test
  void withoutTheModelTheRefrigerantIsAskedFor() {
    assertEquals(Status.NOTHING_YET, run("which").status());
    assertEquals(Optional.of("model"), run("which").next());
  }

  @Test
  void beyondWhatIsKnownThereIsNoNumber() {
    Value value = new DerivedValues(KB).of(KB.cases().get("vacuum").given()).get("superheat");
    assertEquals(new Value.NotTaken(), value);
    assertTrue(run("vacuum").answers().isEmpty());
  }

  @Test
  void aFlammableRefrigerantBringsItsCaution() {
    Caution caution = KB.cautions().get(Caution.FLAMMABLE_REFRIGERANT);
    assertTrue(caution.text().contains("R-290 (A3)"), caution.text());
    assertTrue(KB.readings().get("suction").cautions().contains(caution.id()));
    assertTrue(KB.readings().get("superheat").cautions().contains(caution.id()));
    assertTrue(KB.readings().get("line").cautions().isEmpty());
  }
}
