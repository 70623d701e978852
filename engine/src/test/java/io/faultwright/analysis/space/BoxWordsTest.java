package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.atLeast;
import static io.faultwright.model.Conditions.atMost;
import static io.faultwright.model.Conditions.below;
import static io.faultwright.model.Conditions.between;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.RegionTest;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Boxes in the trainer's words. */
class BoxWordsTest {
  private static final KnowledgeBase KB =
      new KnowledgeBaseBuilder()
          .option("fan", "one", "two")
          .model("A-1", "alpha", Map.of("fan", "one"), "1.0", "2.0")
          .model("A-2", "alpha", Map.of("fan", "two"), "2.0")
          .model("B-1", "beta", Map.of("fan", "one"), "1.0")
          .model("B-2", "beta", Map.of("fan", "two"), "1.0", "2.0")
          .choice("s", "lo", "ok", "hi")
          .measured("t", "K", "0", "20")
          .measured("m", "K", "0", "9")
          .limits(
              LimitsTableBuilder.fixed("m", "family").row(is("family", "alpha"), "2", "4").build())
          .build();

  /** What is asked of t cuts it at 2, 5, 8 and 12. */
  private static final Space SPACE =
      space(
          is("s", "lo"),
          notTaken("s"),
          between("t", "2", "5"),
          atLeast("t", "8"),
          above("t", "12"),
          notTaken("t"),
          limits("m", Side.BELOW),
          notTaken("m"),
          is("model", "A-1", "B-2"),
          is("model", "A-1", "A-2"),
          is("software", "1.0"));

  private static Space space(Condition... asked) {
    return Space.of(KB, KB.equipment().builds(), List.of(asked), List.of());
  }

  /** The smallest box around the situations in which a condition is true, among the possible. */
  private static List<RegionTest> words(Condition condition, Condition possible) {
    Diagrams diagrams = SPACE.diagrams();
    int can = diagrams.and(SPACE.consistent(), SPACE.truth(possible).isTrue());
    int is = diagrams.and(can, SPACE.truth(condition).isTrue());
    return new BoxWords(SPACE, can).tests(new Box(Arrays.asList(diagrams.occurring(is))));
  }

  private static void said(Condition condition, String... words) {
    said(condition, Condition.ALWAYS, words);
  }

  private static void said(Condition condition, Condition possible, String... words) {
    List<String> said =
        words(condition, possible).stream()
            .map(test -> test.reading() + ": " + test.accepts())
            .toList();
    assertEquals(List.of(words), said);
  }

  @Test
  void whatIsNotRestrictedIsNotSaid() {
    said(Condition.ALWAYS);
    said(is("s", "lo", "ok"), "s: [lo, ok]");
  }

  @Test
  void wordsThenWhatCannotBeTaken() {
    said(is("s", "hi"), "s: hi");
    said(any(is("s", "hi"), notTaken("s")), "s: [hi, cannot be taken]");
    said(notTaken("s"), "s: cannot be taken");
  }

  @Test
  void neighbouringStretchesAreOne() {
    said(below("t", "2"), "t: below 2 K");
    said(between("t", "2", "5"), "t: 2 to 5 K");
    said(all(atLeast("t", "2"), below("t", "8")), "t: at least 2 K and below 8 K");
    said(all(atLeast("t", "2"), atMost("t", "12")), "t: 2 to 12 K");
    said(atLeast("t", "8"), "t: at least 8 K");
    said(any(atMost("t", "5"), above("t", "12")), "t: [at most 5 K, above 12 K]");
    said(
        any(below("t", "2"), atLeast("t", "8"), notTaken("t")),
        "t: [below 2 K, at least 8 K, cannot be taken]");
  }

  @Test
  void takenAtAll() {
    said(not(notTaken("t")), "t: not cannot be taken");
    said(not(notTaken("m")), "m: not cannot be taken");
  }

  @Test
  void limitsSayThatTheReadingWasTaken() {
    Condition alpha = is("model", "A-1", "A-2");
    said(limits("m", Side.ABOVE), alpha, "m: above limits");
    said(limits("m", Side.BELOW, Side.ABOVE), alpha, "m: outside limits");
    said(
        all(not(notTaken("t")), limits("m", Side.WITHIN)),
        alpha,
        "t: not cannot be taken",
        "m: within limits");
  }

  /** Only alpha has figures. */
  @Test
  void aMissingFigure() {
    said(is("model", "B-1", "B-2"), "family: beta", "m: no limits known");
    said(is("model", "A-1", "A-2"), "family: alpha", "m: limits known");
    Condition some = any(is("model", "B-1", "B-2"), limits("m", Side.ABOVE));
    said(all(some, not(notTaken("m"))), "m: [above limits, no limits known]");
  }

  @Test
  void equipmentByWhatItHasInCommon() {
    Condition alpha = is("model", "A-1", "A-2");
    said(alpha, any(alpha, is("s", "lo")), "family: alpha", "m: limits known");
    said(all(is("model", "A-1"), is("software", "2.0")), alpha, "fan: one", "software: 2.0");
    said(is("model", "A-2"), alpha, "fan: two");
  }

  @Test
  void equipmentWithNothingInCommonIsNamed() {
    said(
        any(
            all(is("model", "A-1"), is("software", "1.0")),
            all(is("model", "B-2"), not(is("software", "1.0")))),
        "model: A-1 with software 1.0; B-2 with software 2.0");
  }
}
