package io.faultwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.ShownUnits;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import io.faultwright.words.Words;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PublishedUnitsTest {
  private static BigFraction n(String number) {
    return Decimals.parse(number);
  }

  private static Scale scale(String unit, String resolution) {
    return new Scale(
        Units.find(unit).orElseThrow(),
        Optional.of(resolution).filter(r -> !r.isEmpty()).map(PublishedUnitsTest::n));
  }

  private static Amounts shown(ShownUnits units) {
    return new Amounts(new Display(Optional.of(units), Words.ENGLISH));
  }

  @ParameterizedTest
  @CsvSource({
    "65, °C, '', 65 °C, 149 °F, 65 °C (149\u00A0°F)",
    "8.2, bar(g), 0.1, 8.2 bar(g), 118.9 psi(g), 8.2 bar(g) (118.9\u00A0psi(g))",
    "8, K, '', 8 K, 14.4 Δ°F, 8 K (14.4\u00A0Δ°F)",
    "30, psi(g), 1, 2.07 bar(g), 30 psi(g), 30 psi(g) (2.07\u00A0bar(g))",
    "230, V, 1, 230 V, 230 V, 230 V",
    "5, min, 1, 5 min, 5 min, 5 min",
    "-18, °C, 0.5, -18 °C, -0.4 °F, -18 °C (-0.4\u00A0°F)"
  })
  void amounts(String value, String unit, String resolution, String si, String us, String both) {
    Scale scale = scale(unit, resolution);
    assertEquals(si, shown(ShownUnits.SI).amount(n(value), scale));
    assertEquals(us, shown(ShownUnits.US).amount(n(value), scale));
    assertEquals(both, shown(ShownUnits.BOTH).amount(n(value), scale));
  }

  @Test
  void intervals() {
    Scale kelvin = scale("K", "");
    Interval closed = Interval.closed(n("4"), n("8"));
    assertEquals("7.2 to 14.4 Δ°F", shown(ShownUnits.US).interval(closed, kelvin));
    assertEquals(
        "4 to 8 K (7.2 to 14.4\u00A0Δ°F)", shown(ShownUnits.BOTH).interval(closed, kelvin));
    assertEquals(
        "above 65 °C (149\u00A0°F)",
        shown(ShownUnits.BOTH).interval(Interval.above(n("65")), scale("°C", "")));
    assertEquals(
        "at least 65 °C (149\u00A0°F) and below 70 °C (158\u00A0°F)",
        shown(ShownUnits.BOTH)
            .interval(
                new Interval(Interval.atLeast(n("65")).low(), Interval.below(n("70")).high()),
                scale("°C", "")));
  }

  /** Written in the other system: there it is exact, here it is rounded, and never endless. */
  @Test
  void aThresholdOfTheOtherSystemStandsFirstAsWritten() {
    BigFraction written =
        Units.find("°F").orElseThrow().convert(n("65"), Units.find("°C").orElseThrow());
    Scale celsius = scale("°C", "0.5");
    assertEquals("65 °F (18.3\u00A0°C)", shown(ShownUnits.BOTH).amount(written, celsius));
    assertEquals("18.3 °C", shown(ShownUnits.SI).amount(written, celsius));
    assertEquals("65 °F", shown(ShownUnits.US).amount(written, celsius));
    assertEquals(
        "at least 10 °C (50\u00A0°F) and at most 65 °F (18.3\u00A0°C)",
        shown(ShownUnits.BOTH).interval(Interval.closed(n("10"), written), celsius));
  }

  @Test
  void columnsHaveOneUnitEach() {
    Scale pressure = scale("bar(g)", "0.1");
    assertEquals("bar(g) (psi(g))", shown(ShownUnits.BOTH).unit(pressure));
    assertEquals("8.2 (118.9)", shown(ShownUnits.BOTH).number(n("8.2"), pressure));
    assertEquals("psi(g)", shown(ShownUnits.US).unit(pressure));
    assertEquals("118.9", shown(ShownUnits.US).number(n("8.2"), pressure));
    assertEquals("V", shown(ShownUnits.BOTH).unit(scale("V", "1")));
  }

  @Test
  void instrumentsReadToAStepOfTheirOwn() {
    Scale pressure = scale("bar(g)", "0.1");
    assertEquals(
        Optional.of("0.1 bar(g) (1\u00A0psi(g))"), shown(ShownUnits.BOTH).resolution(pressure));
    assertEquals(Optional.of("0.5 °F"), shown(ShownUnits.US).resolution(scale("°C", "0.5")));
    assertEquals(Optional.empty(), shown(ShownUnits.US).resolution(scale("°C", "")));
  }

  /** A finer threshold than the instrument can show keeps its digits. */
  @Test
  void thresholdsCloserThanTheResolutionStayApart() {
    Scale pressure = scale("bar(g)", "0.1");
    assertEquals("119.08 psi(g)", shown(ShownUnits.US).amount(n("8.21"), pressure));
    assertEquals("119.22 psi(g)", shown(ShownUnits.US).amount(n("8.22"), pressure));
  }

  @Test
  void onlyATextThatIsAnAmountIsConverted() {
    assertEquals("1.10 kg (2.43\u00A0lb)", shown(ShownUnits.BOTH).text("1.10 kg"));
    assertEquals("2.43 lb", shown(ShownUnits.US).text("1.1 kg"));
    assertEquals("1.10 kg", shown(ShownUnits.SI).text("1.10 kg"));
    assertEquals("230 V 1~ 50 Hz", shown(ShownUnits.BOTH).text("230 V 1~ 50 Hz"));
    assertEquals("12 furlongs", shown(ShownUnits.US).text("12 furlongs"));
    assertEquals("1.10 kg", Amounts.AS_WRITTEN.text("1.10 kg"));
  }

  @ParameterizedTest
  @EnumSource(ShownUnits.class)
  void rulesStayAsTheyAreWritten(ShownUnits units) {
    KnowledgeBase kb = SampleBase.build();
    KnowledgeBase shown = SampleBase.shownIn(units);
    Interval warm = Interval.above(n("-18"));
    assertEquals(
        new RuleText(kb).interval("room", warm), new RuleText(shown).interval("room", warm));
    assertEquals(new Wording(kb).interval("room", warm), new Wording(shown).interval("room", warm));
    assertEquals(
        units == ShownUnits.SI,
        Wording.published(shown)
            .interval("room", warm)
            .equals(new Wording(kb).interval("room", warm)));
  }

  @Test
  void nothingChangesWhereNothingIsSaid() {
    KnowledgeBase kb = SampleBase.build();
    Domain.Measured room = (Domain.Measured) kb.readings().get("room").domain();
    assertEquals(
        new Wording(kb).interval("room", room.range()),
        Wording.published(kb).interval("room", room.range()));
  }
}
