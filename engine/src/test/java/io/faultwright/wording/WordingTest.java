package io.faultwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Answer.OfEscalation;
import io.faultwright.model.Answer.OfFault;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Not;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

class WordingTest {
  private final KnowledgeBase kb = SampleBase.build();
  private final Wording wording = new Wording(kb);
  private final RuleText ruleText = new RuleText(kb);

  @org.junit.jupiter.api.Test
  void intervalsAreSaidInWordsThatTheRuleLanguageReads() {
    assertInterval("4 to 8 °C", Interval.closed(n("4"), n("8")));
    assertInterval("65 °C", Interval.point(n("65")));
    assertInterval("above -18 °C", Interval.above(n("-18")));
    assertInterval("at least 65 °C", Interval.atLeast(n("65")));
    assertInterval("below 0.5 °C", Interval.below(n("0.50")));
    assertInterval("at most 3 °C", Interval.atMost(n("3")));
    assertInterval("any", new Interval(Optional.empty(), Optional.empty()));
  }

  @org.junit.jupiter.api.Test
  void halfOpenIntervalNeedsTwoPatterns() {
    Interval half = new Interval(Interval.above(n("4")).low(), Interval.atMost(n("8")).high());
    assertEquals("above 4 °C and at most 8 °C", wording.interval("room", half));
    assertEquals(List.of("above 4 °C", "at most 8 °C"), ruleText.patterns("room", half));
  }

  @org.junit.jupiter.api.Test
  void amountWithoutFiniteDecimalIsSaidInTheUnitThatHasOne() {
    BigFraction fahrenheit65 =
        Units.find("°F").orElseThrow().convert(n("65"), Units.find("°C").orElseThrow());
    assertInterval("at least 65 °F", Interval.atLeast(fahrenheit65));
    assertInterval("at least 10 °C and at most 65 °F", Interval.closed(n("10"), fahrenheit65));
  }

  @org.junit.jupiter.api.Test
  void choicesAreNamedOrExceptedWhicheverIsShorter() {
    assertOneOf("Untouched", "untouched", "ice", "untouched");
    assertOneOf("Untouched or Loose", "[untouched, loose]", "ice", "loose", "untouched");
    assertOneOf("not Loose", "not loose", "ice", "none", "partly", "untouched");
    assertOneOf("any", "any", "ice", "loose", "none", "partly", "untouched");
    assertOneOf("No", "no", "fan", "no");
  }

  @org.junit.jupiter.api.Test
  void softwareIsSaidAsAStretchOfThePublishedVersions() {
    assertOneOf("at least 2.9", "at least 2.9", "software", "2.9", "2.10", "3.0");
    assertOneOf("at most 2.9", "at most 2.9", "software", "1.4", "2.9");
    assertOneOf("2.9 to 2.10", "2.9 to 2.10", "software", "2.9", "2.10");
    assertOneOf("1.4 or 2.10", "[1.4, 2.10]", "software", "2.10", "1.4");
    assertOneOf("2.10", "2.10", "software", "2.10");
  }

  @org.junit.jupiter.api.Test
  void limitsAreSaidBySide() {
    assertLimits("above limits", EnumSet.of(Side.ABOVE));
    assertLimits("within limits", EnumSet.of(Side.WITHIN));
    assertLimits("outside limits", EnumSet.of(Side.BELOW, Side.ABOVE));
    assertLimits("not above limits", EnumSet.of(Side.BELOW, Side.WITHIN));
    assertLimits("not below limits", EnumSet.of(Side.WITHIN, Side.ABOVE));
    assertLimits("any", EnumSet.allOf(Side.class));
  }

  @org.junit.jupiter.api.Test
  void valuesCarryTheirUnitOrTitle() {
    assertEquals("-18.5 °C", wording.value("room", new Value.Number(n("-18.50"))));
    assertEquals("Untouched", wording.value("ice", new Value.Word("untouched")));
    assertEquals("untouched", ruleText.value("ice", new Value.Word("untouched")));
    assertEquals("cannot be taken", ruleText.value("ice", new Value.NotTaken()));
  }

  @org.junit.jupiter.api.Test
  void nestedConditionsSayWhatBelongsTogether() {
    Condition cold = test("room", new InInterval(Interval.below(n("-18"))));
    Condition still = test("fan", oneOf("no"));
    Condition untouched = test("ice", oneOf("untouched"));
    assertEquals("always", wording.condition(Condition.ALWAYS));
    assertEquals(
        "Ice after the defrost: Untouched; (one of: Room: below -18 °C, or Fan runs: No)",
        wording.condition(new All(List.of(untouched, new Any(List.of(cold, still))))));
    assertEquals(
        "one of: (Room: below -18 °C; Fan runs: No), or Ice after the defrost: Untouched",
        wording.condition(new Any(List.of(new All(List.of(cold, still)), untouched))));
    assertEquals(
        "not (Room: below -18 °C; Fan runs: No)",
        wording.condition(new Not(new All(List.of(cold, still)))));
    assertEquals("Room: not below -18 °C", wording.condition(new Not(cold)));
    assertEquals("Ice after the defrost: not Untouched", wording.condition(new Not(untouched)));
    assertEquals("Fan runs: Yes", wording.condition(new Not(still)));
    assertEquals(
        "Room: not cannot be taken", wording.condition(new Not(test("room", new CannotBeTaken()))));
  }

  @org.junit.jupiter.api.Test
  void linesAreThePartsThatMustAllHold() {
    Condition still = test("fan", oneOf("no"));
    Condition untouched = test("ice", oneOf("untouched"));
    assertEquals(List.of(), wording.lines(Condition.ALWAYS));
    assertEquals(
        List.of("Fan runs: No", "Ice after the defrost: Untouched"),
        wording.lines(new All(List.of(still, new All(List.of(untouched))))));
  }

  @org.junit.jupiter.api.Test
  void buildsAreSingledOutByAsFewFactsAsPossible() {
    assertBuilds("all equipment", build -> true);
    assertBuilds("Family: Fell", build -> build.model().family().equals("fell"));
    assertBuilds(
        "Defrost: Electric", build -> build.attribute("defrost").equals(Optional.of("electric")));
    assertBuilds(
        "Model: FL-12G1; Software: at most 2.9",
        build ->
            build.attribute("defrost").equals(Optional.of("hot-gas"))
                && build.software().filter(v -> v.text().matches("1.4|2.9")).isPresent());
    assertBuilds("Model: FL-12G1", build -> build.model().id().equals("FL-12G1"));
    assertBuilds(
        "Defrost: Hot gas; Software: at least 2.10",
        build -> build.toString().matches("FL-12G1 with software 2.10|TN-08G2.*"));
    assertBuilds(
        "one of: (Model: FL-12E1; Software: 1.4), or (Model: FL-12G1; Software: 2.10)",
        build -> build.toString().matches("FL-12G1 with software 2.10|FL-12E1 with software 1.4"));
  }

  @org.junit.jupiter.api.Test
  void answersAreSaidByTitle() {
    assertEquals("Valve stuck", wording.answer(new OfFault("valve-stuck")));
    assertEquals("ask the hotline", wording.answer(new OfEscalation("the hotline")));
    assertEquals(
        "not Fan dead or Valve stuck",
        wording.conclusion(new Conclusion.Exclude(Sorted.set(List.of("valve-stuck", "fan-dead")))));
    assertEquals(
        "Fan dead and Valve stuck",
        wording.conclusion(
            new Conclusion.Conclude(Sorted.set(List.of("valve-stuck", "fan-dead")))));
  }

  private void assertInterval(String expected, Interval interval) {
    assertEquals(expected, wording.interval("room", interval));
    assertEquals(expected, ruleText.interval("room", interval));
  }

  private void assertOneOf(String title, String id, String subject, String... values) {
    assertEquals(title, wording.pattern(subject, oneOf(values)));
    assertEquals(id, ruleText.pattern(subject, oneOf(values)));
  }

  private void assertLimits(String expected, EnumSet<Side> sides) {
    assertEquals(expected, wording.pattern("room", new AgainstLimits(sides)));
    assertEquals(expected, ruleText.pattern("room", new AgainstLimits(sides)));
  }

  private void assertBuilds(String expected, java.util.function.Predicate<Build> chosen) {
    assertEquals(
        expected, wording.builds(kb.equipment().builds().stream().filter(chosen).toList()));
  }

  private static OneOf oneOf(String... values) {
    return new OneOf(Sorted.set(List.of(values)));
  }

  private static Test test(String subject, Condition.Pattern pattern) {
    return new Test(subject, pattern, SampleBase.PLACE);
  }

  private static BigFraction n(String text) {
    return Decimals.parse(text);
  }
}
