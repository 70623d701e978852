package io.faultwright.analysis.recognition;

import static io.faultwright.analysis.SmallBases.findings;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Value;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Complaints with two symptoms or none. */
class RecognitionAnalysisTest {
  private static final String BASE =
      """
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        models:
          F-1: { family: fell, options: {} }
          T-1: { family: tarn, options: {} }
      readings:
        ice: { ask: Ice, values: [none, partly, thick], normal: none }
        noise: { ask: Noise, values: [hum, rattle], normal: hum }
        told: { ask: Told, values: yes/no }
        spare: { ask: Spare, values: [good, bad], normal: good }
      faults:
        a: { title: A, remedy: [Mend it.], verify: [Look.] }
      """;

  private static String symptoms(String... lines) {
    StringBuilder text = new StringBuilder(BASE + "symptoms:\n");
    for (String line : lines) {
      text.append(
              "  " + line.replace("RULES", "rules: { r: { when: {}, conclude: a, because: B } }"))
          .append("\n");
    }
    return text.toString();
  }

  private static List<String> found(FindingKind kind, String yaml) {
    return findings(kind, yaml).stream().map(Finding::message).toList();
  }

  private static final String FULL =
      symptoms(
          "iced: { title: I, recognise: { ice: [partly, thick] }, RULES }",
          "loud: { title: L, recognise: { noise: rattle }, RULES }");

  @Test
  void twoComplaintsAtOnceAreAmbiguous() {
    List<Finding> both = findings(FindingKind.AMBIGUOUS_SYMPTOMS, FULL);
    assertEquals(
        List.of("one complaint is recognised as `iced` and as `loud`"),
        both.stream().map(Finding::message).toList());
    assertEquals(
        List.of(new RegionTest("ice", "[partly, thick]"), new RegionTest("noise", "rattle")),
        both.get(0).region());
    assertEquals(
        new Value.Word("rattle"), both.get(0).witness().orElseThrow().readings().get("noise"));
    assertEquals(List.of(), found(FindingKind.UNRECOGNISED_COMPLAINT, FULL));
  }

  @Test
  void notWhereTheyCannotMeet() {
    assertEquals(
        List.of(),
        found(
            FindingKind.AMBIGUOUS_SYMPTOMS,
            FULL.replace("title: I,", "title: I, applies: { family: fell },")
                .replace("title: L,", "title: L, applies: { family: tarn },")));
    assertEquals(
        List.of(),
        found(
            FindingKind.AMBIGUOUS_SYMPTOMS,
            FULL + "never: { n: { when: { noise: rattle, ice: not none }, because: B } }\n"));
    assertEquals(
        List.of(),
        found(
            FindingKind.AMBIGUOUS_SYMPTOMS,
            symptoms(
                "iced: { title: I, recognise: { ice: thick }, RULES }",
                "rest: { title: R, recognise: { ice: partly }, RULES }")));
  }

  @Test
  void everyPairIsNamedOnce() {
    assertEquals(
        List.of(
            "one complaint is recognised as `iced` and as `loud`",
            "one complaint is recognised as `iced` and as `told`",
            "one complaint is recognised as `loud` and as `told`"),
        found(
            FindingKind.AMBIGUOUS_SYMPTOMS,
            FULL
                + "  told: { title: T, recognise: { told: yes },"
                + " rules: { r: { when: {}, conclude: a, because: B } } }\n"));
  }

  /** The spare reading is not asked for by any symptom, so its bad value is no complaint here. */
  @Test
  void whatNobodyRecognises() {
    List<Finding> missed =
        findings(
            FindingKind.UNRECOGNISED_COMPLAINT,
            symptoms(
                "iced: { title: I, recognise: { ice: thick }, RULES }",
                "loud: { title: L, recognise: { noise: rattle }, RULES }"));
    assertEquals(
        List.of("no symptom recognises the complaint where `ice: partly` and `noise: hum`"),
        missed.stream().map(Finding::message).toList());
    assertEquals(2, missed.get(0).places().size());
    assertEquals(
        new Value.Word("partly"), missed.get(0).witness().orElseThrow().readings().get("ice"));
  }

  @Test
  void onEquipmentThatNoSymptomIsOffered() {
    assertEquals(
        List.of("no symptom recognises the complaint where `family: tarn` and `ice: not none`"),
        found(
                FindingKind.UNRECOGNISED_COMPLAINT,
                symptoms(
                    "iced: { title: I, applies: { family: fell },"
                        + " recognise: { ice: [partly, thick] }, RULES }"))
            .stream()
            .map(message -> message.replace("[partly, thick]", "not none"))
            .toList());
  }

  @Test
  void nothingIsMissedThatCannotHappen() {
    assertEquals(
        List.of(),
        found(
            FindingKind.UNRECOGNISED_COMPLAINT,
            symptoms("iced: { title: I, recognise: { ice: thick }, RULES }")
                + "never: { n: { when: { ice: partly }, because: B } }\n"));
  }
}
