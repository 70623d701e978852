package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Comparison;
import io.faultwright.change.Edit.Concern;
import io.faultwright.change.Outcome.Kind;
import io.faultwright.change.SymptomChange;
import io.faultwright.source.SourceFile;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ComparingTest {
  private static final String LIMITS = "limits.yaml";

  @Test
  void aHandbookMeansWhatItMeans() {
    Comparison comparison = Pair.ofDemo().comparison();
    assertTrue(comparison.sameMeaning());
    assertEquals(List.of(), comparison.edits());
    assertEquals(14, comparison.symptoms().size());
  }

  @Test
  void proseAloneChangesNoMeaning() {
    Comparison comparison =
        Pair.ofDemo()
            .edit("handbook.yaml", "revision: \"7\"", "revision: \"8\"")
            .edit("symptoms/drain-frozen.yaml", "title: The drain is frozen", "title: Frozen drain")
            .edit(
                "symptoms/drain-frozen.yaml", "because: Water stands", "because: The water stands")
            .edit("guides/welcome.md", "#", "# ")
            .comparison();
    assertTrue(comparison.sameMeaning());
    assertEquals(
        List.of(
            "text guide welcome text",
            "text handbook  revision",
            "text rule drain-frozen/pipe-too-flat because",
            "text symptom drain-frozen title"),
        names(comparison));
  }

  @Test
  void workThatIsDoneDifferentlyIsTold() {
    Comparison comparison =
        Pair.ofDemo()
            .edit("faults/drain.yaml", "Replace the", "Renew the")
            .edit("cautions.yaml", "Live parts will kill", "Live parts kill")
            .comparison();
    assertTrue(comparison.sameMeaning());
    assertFalse(comparison.edits(Concern.WORK).isEmpty());
    assertEquals(comparison.edits(), comparison.edits(Concern.WORK));
  }

  @Test
  void filesThatMoveAndLinesThatChangePlacesAreNoChange() {
    Pair pair = Pair.ofDemo();
    String limits = pair.text(LIMITS);
    int cut = limits.indexOf("  suction-pressure:\n");
    List<String> rows = limits.substring(cut).lines().toList();
    String second = String.join("\n", rows) + "\n";
    String swapped =
        second.replace(
            "      - { refrigerant: r290, low: 0.5, high: 1.2 }\n"
                + "      - { refrigerant: r404a, low: 0.9, high: 1.7 }\n",
            "      - { refrigerant: r404a, low: 0.9, high: 1.7 } # moved\n"
                + "      - { high: 1.20, low: 0.5, refrigerant: [r290] }\n");
    Comparison comparison =
        pair.replace(
                LIMITS,
                new SourceFile("tables/first.yaml", limits.substring(0, cut)),
                new SourceFile("tables/second.yaml", "limits:\n" + swapped))
            .comparison();
    assertTrue(comparison.sameMeaning());
    assertEquals(List.of(), comparison.edits());
  }

  @Test
  void aUnitThatChangesChangesNoMeaning() {
    Comparison comparison =
        Pair.of(DemoYaml.SMALL)
            .edit("handbook.yaml", "unit: bar(g), range: 0 to 10", "unit: kPa(g), range: 0 to 1000")
            .edit("handbook.yaml", "low: 2, high: 4", "low: 200, high: 4 bar(g)")
            .comparison();
    assertTrue(comparison.sameMeaning());
    assertEquals(List.of("work reading pressure unit"), names(comparison));
  }

  @Test
  void aDifferenceIsComparedInWhateverUnits() {
    String rules =
        DemoYaml.SMALL
            .replace(
                "  pressure: {",
                "  air: { ask: Air, unit: °C, range: -20 to 40 }\n"
                    + "  coil: { ask: Coil, unit: °C, range: -40 to 40 }\n"
                    + "  gap: { difference: [air, coil] }\n"
                    + "  pressure: {")
            .replace("{ lamp: v8 }", "{ lamp: v8, gap: above 9 K }");
    Comparison same =
        Pair.of(rules)
            .edit("handbook.yaml", "unit: °C, range: -20 to 40", "unit: °F, range: -4 to 104")
            .edit("handbook.yaml", "gap: above 9 K", "gap: above 16.2 Δ°F")
            .comparison();
    assertTrue(same.sameMeaning());
    SymptomChange other =
        changed(
            Pair.of(rules).edit("handbook.yaml", "gap: above 9 K", "gap: above 7 K").comparison(),
            "dark");
    assertEquals(
        "[RegionTest[reading=lamp, accepts=v8], RegionTest[reading=gap, accepts=above 7 K and at most 9 K]]",
        other.regions().get(0).readings().toString());
  }

  @Test
  void everyOutcomeIsTold() {
    Pair pair =
        Pair.of(DemoYaml.SMALL)
            .edit("handbook.yaml", "v1: one, v2", "v0: none, v2")
            .edit("handbook.yaml", "lamp: v1 }, conclude: f1", "lamp: v0 }, conclude: f1")
            .edit(
                "handbook.yaml",
                "first: []",
                "first: [{ when: { lamp: not v2 }, otherwise: other }]")
            .edit(
                "handbook.yaml",
                "when: { lamp: x }, conclude: f2",
                "when: { lamp: v3 }, conclude: f2")
            .edit("handbook.yaml", "{ lamp: v4 }, conclude: f1", "{ lamp: x }, conclude: f1")
            .edit(
                "handbook.yaml",
                "[{ low: 2, high: 4 }]",
                "[{ model: [A-1, A-3], low: 2, high: 4 }]")
            .edit(
                "handbook.yaml", "never: {}", "never: { n: { when: { lamp: v6 }, because: So. } }")
            .edit("handbook.yaml", "recognise: { lamp: not x }", "recognise: { lamp: not v7 }")
            .edit("handbook.yaml", "applies: {}", "applies: { model: not A-3 }")
            .edit("handbook.yaml", "lamp: v8 }, conclude: f1", "lamp: v8 }, escalate: hotline");
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    for (ChangedRegion region : changed(pair.comparison(), "dark").regions()) {
      assertTrue(region.replayed());
      kinds.add(region.before().kind());
      kinds.add(region.after().kind());
    }
    assertEquals(EnumSet.allOf(Kind.class), kinds);
  }

  @Test
  void aStatementAboutOtherReadingsCanLeaveNothingPossible() {
    String text =
        DemoYaml.SMALL.replace(
                "  pressure: { ask",
                "  fan: { ask: How it runs, values: [slow, fast] }\n  pressure: { ask")
            + "never:\n  n: { when: { model: A-2, fan: slow }, because: So. }\n";
    Comparison comparison =
        Pair.of(text).edit("handbook.yaml", "fan: slow }", "fan: [slow, fast] }").comparison();
    for (ChangedRegion region : changed(comparison, "dark").regions()) {
      assertTrue(region.replayed());
      assertEquals(Kind.CANNOT_HAPPEN, region.after().kind());
      assertEquals("A-2", region.witness().equipment().get("model"));
    }
    assertFalse(changed(comparison, "dark").regions().isEmpty());
  }

  @Test
  void equipmentOfOneSideIsToldApart() {
    Comparison comparison =
        Pair.of(DemoYaml.SMALL)
            .edit(
                "handbook.yaml",
                "A-2: { title: Two, family: fell, options: {} }",
                "A-4: { title: Four, family: fell, options: {} }")
            .comparison();
    assertEquals("[A-4]", comparison.added().toString());
    assertEquals("[A-2]", comparison.removed().toString());
    assertTrue(comparison.symptoms().stream().allMatch(SymptomChange::unchanged));
    assertFalse(comparison.sameMeaning());
  }

  @Test
  void aReadingOfAnotherNatureIsAnotherReading() {
    Comparison comparison =
        Pair.of(DemoYaml.SMALL)
            .edit(
                "handbook.yaml",
                "pressure: { ask: How much, unit: bar(g), range: 0 to 10 }",
                "pressure: { ask: How much, values: yes/no }")
            .edit(
                "handbook.yaml",
                "limits: { pressure: { by: [model], rows: [{ low: 2, high: 4 }] } }",
                "")
            .edit("handbook.yaml", "pressure: within limits", "pressure: yes")
            .edit("handbook.yaml", "pressure: outside limits", "pressure: no")
            .comparison();
    Set<String> readings = new TreeSet<>();
    changed(comparison, "dark")
        .regions()
        .forEach(region -> region.readings().forEach(test -> readings.add(test.reading())));
    assertEquals(Set.of("lamp", "pressure", "pressure before"), readings);
  }

  private static SymptomChange changed(Comparison comparison, String id) {
    return comparison.symptoms().stream()
        .filter(symptom -> symptom.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  static List<String> names(Comparison comparison) {
    return comparison.edits().stream()
        .map(
            edit ->
                edit.concern().word() + " " + edit.kind() + " " + edit.id() + " " + edit.field())
        .toList();
  }
}
