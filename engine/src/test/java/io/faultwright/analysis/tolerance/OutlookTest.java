package io.faultwright.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Which tests a tolerance leaves open, and the points that stand for each way they come out. */
class OutlookTest {
  private static final String BASE =
      """
      handbook: { title: T, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en, disclaimer: D }
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        models:
          F-1: { family: fell, options: {} }
          T-1: { family: tarn, options: {} }
          C-1: { family: tarn, options: {}, refrigerant: R-LAB }
        refrigerants:
          R-LAB:
            safety: A1
            source: Made up.
            table:
              - { at: -40 °C, bubble: 1 bar(a), dew: 1 bar(a) }
              - { at: 0 °C, bubble: 5 bar(a), dew: 5 bar(a) }
      readings:
        t: { ask: T, unit: K, range: 0 to 20, accuracy: 1 K }
        exact: { ask: E, unit: K, range: 0 to 20 }
        apart: { difference: [t, exact] }
        ambient: { ask: A, unit: °C, range: 0 to 40, accuracy: 1 K }
        room: { ask: R, unit: °C, range: 0 to 40 }
        smooth: { ask: S, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        stepped: { ask: S, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        sharp: { ask: S, unit: bar, range: 0 to 30 }
        grid: { ask: G, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        tarn-only: { ask: O, unit: K, range: 0 to 20, accuracy: 1 K, applies: { family: tarn } }
        held: { ask: H, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        holed: { ask: H, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        own: { ask: O, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        absolute: { ask: P, unit: bar(a), range: 0.5 to 8, accuracy: 0.2 bar }
        saturated: { saturation: { pressure: absolute, on: dew } }
        cool: { ask: C, unit: bar, range: 0 to 30, accuracy: 0.5 bar }
        s: { ask: S, values: [lo, hi] }
      limits:
        smooth:
          by: [ambient]
          between: interpolate
          rows: [{ ambient: 0, high: 10 }, { ambient: 20, high: 15 }, { ambient: 40, high: 15 }]
        stepped:
          by: [ambient]
          between: step
          rows: [{ ambient: 0 to 20, low: 2, high: 5 }, { ambient: 20 to 30, low: 2, high: 15 }]
        sharp:
          by: [room]
          between: step
          rows: [{ room: 0 to 20, low: 2, high: 5 }, { room: 20 to 40, high: 15 }]
        held:
          by: [tarn-only]
          between: interpolate
          rows: [{ tarn-only: 0, high: 5 }, { tarn-only: 20, high: 5 }]
        holed:
          by: [ambient]
          between: step
          rows: [{ ambient: 0 to 19.5, low: 2, high: 5 }, { ambient: 20.5 to 40, low: 2, high: 5 }]
        own:
          by: [family, ambient]
          between: step
          rows:
            - { family: fell, ambient: 0 to 40, low: 2, high: 15 }
            - { family: tarn, ambient: 0 to 20, low: 2, high: 5 }
            - { family: tarn, ambient: 20 to 40, low: 2, high: 15 }
        cool:
          by: [saturated]
          between: interpolate
          rows: [{ saturated: -40, high: 5 }, { saturated: 0, high: 5 }]
        grid:
          by: [ambient, room]
          between: interpolate
          rows:
            - { ambient: 0, room: 0, low: 4 }
            - { ambient: 40, room: 0, low: 4 }
            - { ambient: 0, room: 40, low: 4 }
            - { ambient: 40, room: 40, low: 12 }
      faults:
        a: { title: A, remedy: [Mend it.], verify: [Look.] }
      """;

  private static KnowledgeBase knowledge(String... whens) {
    StringBuilder rules = new StringBuilder("symptoms:\n  x:\n    title: X\n    rules:\n");
    for (int i = 0; i < whens.length; i++) {
      rules.append("      r" + i + ": { when: {" + whens[i] + "}, conclude: a, because: B }\n");
    }
    return Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", BASE + rules))));
  }

  /** Readings and numbers, such as {@code t 5 exact 3}. */
  private static Situation given(String text) {
    String[] words = text.split(" ");
    SortedMap<String, Value> readings = new TreeMap<>(Map.of("s", new Value.Word("lo")));
    for (int i = 0; i < words.length; i += 2) {
      readings.put(words[i], new Value.Number(Decimals.parse(words[i + 1])));
    }
    return new Situation(new TreeMap<>(Map.of("model", "F-1")), readings);
  }

  private static Build build(KnowledgeBase knowledge, String model) {
    return knowledge.equipment().builds().stream()
        .filter(build -> build.model().id().equals(model))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isOpen(String given, String when, String model) {
    KnowledgeBase knowledge = knowledge(when);
    ToleranceBox box = new ToleranceBox(knowledge, given(given));
    return !new Outlook(knowledge, knowledge.symptoms().get("x"))
        .open(box, build(knowledge, model))
        .isEmpty();
  }

  private static void open(String given, String when) {
    assertTrue(isOpen(given, when, "F-1"));
  }

  private static void settled(String given, String when) {
    assertFalse(isOpen(given, when, "F-1"));
  }

  /** For each point the values of some readings. */
  private static List<List<String>> points(String given, List<String> asked, String... whens) {
    KnowledgeBase knowledge = knowledge(whens);
    ToleranceBox box = new ToleranceBox(knowledge, given(given));
    Outlook outlook = new Outlook(knowledge, knowledge.symptoms().get("x"));
    Build build = build(knowledge, "F-1");
    List<Condition.Test> open = outlook.open(box, build);
    return outlook.points(given(given), box, build, open).orElseThrow().stream()
        .map(point -> asked.stream().map(reading -> shown(point, reading)).toList())
        .toList();
  }

  private static String shown(Situation point, String reading) {
    return point
        .readings()
        .get(reading)
        .match(word -> word.id(), number -> Decimals.show(number.amount()), () -> "refused");
  }

  @Test
  void aThresholdWithinTheTolerance() {
    open("t 5.5", "t: above 5 K");
    open("t 6", "t: above 5 K");
    settled("t 6.1", "t: above 5 K");
    settled("t 3.9", "t: above 5 K");
    open("t 5", "t: 4.5 to 5.5 K");
    settled("t 5", "t: 3 to 7 K");
    settled("t 5", "t: 6.5 to 7 K");
    settled("t 5", "t: 2 to 3 K");
  }

  @Test
  void withoutATolerance() {
    settled("exact 5", "exact: above 5 K");
    settled("exact 5", "exact: at least 5 K");
    settled("ambient 20", "t: above 5 K");
    settled("t 5", "s: lo");
    settled("t 5", "t: cannot be taken");
  }

  @Test
  void whatIsComputedIsAsOpenAsWhatItIsComputedFrom() {
    open("t 9 exact 3", "apart: above 5.5 K");
    settled("t 9 exact 3", "apart: above 4.9 K");
    settled("t 9 exact 3", "apart: above 7.1 K");
    settled("t 9", "apart: above 5.5 K");
  }

  @Test
  void whatTheEquipmentLacksIsSettled() {
    assertFalse(isOpen("tarn-only 5", "tarn-only: above 5 K", "F-1"));
    assertTrue(isOpen("tarn-only 5", "tarn-only: above 5 K", "T-1"));
  }

  /** At 16 °C the limit is 14 bar, and within the tolerance it runs from 13.75 to 14.25 bar. */
  @Test
  void aLimitThatMovesWithItsDriver() {
    open("smooth 14 ambient 16", "smooth: above limits");
    open("smooth 13.3 ambient 16", "smooth: above limits");
    open("smooth 14.7 ambient 16", "smooth: above limits");
    settled("smooth 13.2 ambient 16", "smooth: above limits");
    settled("smooth 14.8 ambient 16", "smooth: above limits");
    settled("smooth 14", "smooth: above limits");
    settled("ambient 16", "smooth: above limits");
  }

  /** Around the bend at 20 °C the limit is at most 15 bar: 14.75 at one end, 15 at the other. */
  @Test
  void aBendWithinTheTolerance() {
    open("smooth 15.4 ambient 20", "smooth: above limits");
    settled("smooth 15.6 ambient 20", "smooth: above limits");
    settled("smooth 14.2 ambient 20", "smooth: above limits");
  }

  @Test
  void aStepWithinTheTolerance() {
    open("stepped 9 ambient 20.5", "stepped: above limits");
    settled("stepped 9 ambient 18.5", "stepped: above limits");
    settled("stepped 9 ambient 22", "stepped: above limits");
    open("stepped 5.3 ambient 18.5", "stepped: above limits");
    open("stepped 2.3 ambient 18.5", "stepped: below limits");
  }

  /** The end of the limits itself is within them. */
  @Test
  void aReachThatTouchesALimit() {
    open("smooth 15.5 ambient 25", "smooth: above limits");
    open("stepped 1.5 ambient 10", "stepped: below limits");
  }

  @Test
  void onlyTheRowsOfTheEquipmentCount() {
    assertFalse(isOpen("own 9 ambient 20.5", "own: above limits", "F-1"));
    assertTrue(isOpen("own 9 ambient 20.5", "own: above limits", "T-1"));
  }

  @Test
  void aDriverThatTheEquipmentLacks() {
    assertFalse(isOpen("held 5 tarn-only 5", "held: above limits", "F-1"));
    assertTrue(isOpen("held 5 tarn-only 5", "held: above limits", "T-1"));
  }

  /** Around 20 °C no row holds, though on either side the same figures do. */
  @Test
  void aHoleBetweenRowsWithinTheTolerance() {
    open("holed 3.5 ambient 20", "holed: above limits");
    settled("holed 3.5 ambient 25", "holed: above limits");
  }

  /** The curve begins at 1 bar: below, nobody knows a temperature. */
  @Test
  void aCurveThatEndsWithinTheTolerance() {
    assertTrue(isOpen("absolute 1.1", "saturated: above -5 °C", "C-1"));
    assertFalse(isOpen("absolute 1.3", "saturated: above -5 °C", "C-1"));
    assertTrue(isOpen("absolute 4.5", "saturated: above -5 °C", "C-1"));
    assertTrue(isOpen("cool 1 absolute 1.1", "cool: above limits", "C-1"));
    assertFalse(isOpen("cool 1 absolute 1.3", "cool: above limits", "C-1"));
    assertFalse(isOpen("cool 1", "cool: above limits", "C-1"));
  }

  /** From 30 °C on there is no figure. */
  @Test
  void aFigureThatIsMissingHereAndThere() {
    open("stepped 9 ambient 30.5", "stepped: above limits");
    open("stepped 9 ambient 29.5", "stepped: above limits");
    settled("stepped 9 ambient 35", "stepped: above limits");
  }

  @Test
  void exactReadingsAgainstExactLimits() {
    settled("sharp 5 room 20", "sharp: above limits");
    settled("sharp 15 room 20", "sharp: above limits");
    settled("sharp 5 room 10", "sharp: above limits");
    settled("sharp 2 room 10", "sharp: below limits");
  }

  /** At 20 °C on both the low limit is 6 bar; it runs from 5.9 to 6.1 bar as ambient does. */
  @Test
  void limitsAlongTwoDrivers() {
    open("grid 6 ambient 20 room 20", "grid: below limits");
    settled("grid 13 ambient 20 room 20", "grid: below limits");
    settled("grid 3 ambient 20 room 20", "grid: below limits");
    settled("grid 6 ambient 20", "grid: below limits");
  }

  @Test
  void aPointForEachWayItComesOut() {
    assertEquals(List.of(List.of("6"), List.of("5")), points("t 5", List.of("t"), "t: above 5 K"));
    assertEquals(
        List.of(List.of("5.5", "lo"), List.of("6", "lo"), List.of("5", "lo")),
        points("t 5", List.of("t", "s"), "t: above 5 K", "t: at most 5.5 K"));
  }

  /** The point lies in the box: where the tolerance ends, or the range. */
  @Test
  void pointsLieWithinToleranceAndRange() {
    assertEquals(
        List.of(List.of("1"), List.of("0")), points("t 0.2", List.of("t"), "t: above 0.2 K"));
    assertEquals(
        List.of(List.of("20"), List.of("19")), points("t 19.8", List.of("t"), "t: above 19 K"));
  }

  /** A difference that is open is told by what it is computed from; what is exact stays. */
  @Test
  void pointsOfWhatIsComputed() {
    for (List<String> point : points("t 9 exact 3", List.of("t", "exact"), "apart: above 5.5 K")) {
      assertEquals("3", point.get(1));
    }
    assertEquals(2, points("t 9 exact 3", List.of("t"), "apart: above 5.5 K").size());
  }

  @Test
  void drivenLimitsMoveTheDriverToo() {
    List<List<String>> points =
        points("smooth 14 ambient 16", List.of("smooth", "ambient"), "smooth: above limits");
    assertEquals(2, points.size());
    assertTrue(limit(points.get(0).get(1)).compareTo(Decimals.parse(points.get(0).get(0))) < 0);
    assertTrue(limit(points.get(1).get(1)).compareTo(Decimals.parse(points.get(1).get(0))) >= 0);
  }

  private static BigFraction limit(String ambient) {
    return Decimals.parse(ambient).divide(4).add(10);
  }

  /** True below 30 °C or false, and unknown beyond. */
  @Test
  void anUnknownTruthIsAWayToComeOutToo() {
    List<List<String>> points =
        points("stepped 15 ambient 29.5", List.of("ambient"), "stepped: above limits");
    assertEquals(3, points.size());
    assertTrue(Decimals.parse(points.get(1).get(0)).compareTo(Decimals.parse("30")) > 0);
  }

  @Test
  void statementsOfWhatCannotBeCountAsWell() {
    String nevers = "never: { n: { when: { t: above 5.5 K }, because: B } }\n";
    KnowledgeBase general =
        Resolver.resolve(
            new Sources(
                List.of(
                    SourceFile.of(
                        "handbook.yaml",
                        BASE
                            + nevers
                            + "symptoms: { x: { title: X, recognise: { exact: at most 20 K },"
                            + " first: [{ when: { apart: above 1 K }, otherwise: y }],"
                            + " never: { m: { when: { t: below 4.5 K }, because: B } },"
                            + " rules: { r: { when: { t: above 5 K }, conclude: a, because: B },"
                            + " r2: { when: { t: above 5 K }, conclude: a, because: B } } },"
                            + " y: { title: Y, rules: { r: { when: {}, conclude: a, because: B } } } }\n"))));
    ToleranceBox box = new ToleranceBox(general, given("t 5 exact 4"));
    List<String> open =
        new Outlook(general, general.symptoms().get("x"))
            .open(box, build(general, "F-1")).stream().map(Condition.Test::subject).toList();
    assertEquals(List.of("apart", "t", "t", "t"), open, "each test once");
  }

  @Test
  void tooManyTestsAreNotWorkedOut() {
    String[] many = new String[25];
    for (int i = 0; i < many.length; i++) {
      many[i] = "t: above 5." + (10 + i) + " K";
    }
    assertEquals(Optional.empty(), pointsOf(many));
    String[] some = Arrays.copyOf(many, 24);
    assertEquals(25, pointsOf(some).orElseThrow().size());
  }

  private static Optional<List<Situation>> pointsOf(String... whens) {
    KnowledgeBase knowledge = knowledge(whens);
    ToleranceBox box = new ToleranceBox(knowledge, given("t 5"));
    Outlook outlook = new Outlook(knowledge, knowledge.symptoms().get("x"));
    Build build = build(knowledge, "F-1");
    return outlook.points(given("t 5"), box, build, outlook.open(box, build));
  }

  @Test
  void theBoxAroundWhatIsShown() {
    KnowledgeBase knowledge = knowledge("t: above 5 K");
    ToleranceBox box = new ToleranceBox(knowledge, given("t 19.5 exact 3 ambient 0.2"));
    Build build = build(knowledge, "F-1");
    assertEquals(Optional.of(closed("18.5", "20")), box.reach("t", build));
    assertEquals(Optional.of(closed("0", "1.2")), box.reach("ambient", build));
    assertEquals(Optional.of(closed("3", "3")), box.reach("exact", build));
    assertEquals(Optional.of(closed("15.5", "17")), box.reach("apart", build));
    assertEquals(Optional.empty(), box.reach("smooth", build));
    assertEquals(Optional.empty(), box.reach("s", build));
    assertEquals(Decimals.parse("0.75"), box.half("apart", build));
    assertEquals(Decimals.parse("0"), box.half("exact", build));
    assertFalse(box.mayLeaveCurves("apart", build));
    assertFalse(box.mayLeaveCurves("t", build));
  }

  private static Interval closed(String low, String high) {
    return Interval.closed(Decimals.parse(low), Decimals.parse(high));
  }
}
