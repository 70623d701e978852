package io.faultwright.model;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.LimitsTableBuilder.fixed;
import static io.faultwright.model.LimitsTableBuilder.interpolated;
import static io.faultwright.model.LimitsTableBuilder.stepped;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Decimals;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class LimitsTest {
  private static final Condition FELL = is(Equipment.FAMILY, "fell");
  private static final Condition TARN = is(Equipment.FAMILY, "tarn");
  private static final Build FELL_12 =
      new KnowledgeBaseBuilder()
          .model("FL-12", "fell", Map.of())
          .build()
          .equipment()
          .builds()
          .get(0);

  @Test
  void aRowOfAnotherBuildDoesNotCount() {
    LimitsTable table = fixed("p", "family").row(TARN, "1", "2").row(FELL, "3", "4").build();
    assertEquals(band("3", "4"), Limits.of(table, FELL_12).at(List.of()));
  }

  @Test
  void aBuildWithoutARowHasNoLimits() {
    LimitsTable table = fixed("p", "family").row(TARN, "1", "2").build();
    assertEquals(Optional.empty(), Limits.of(table, FELL_12).at(List.of()));
  }

  @Test
  void rowsThatDisagreeSayNothing() {
    LimitsTable table = fixed("p").row(FELL, "1", "2").row(FELL, "1", "3").build();
    assertEquals(Optional.empty(), Limits.of(table, FELL_12).at(List.of()));
  }

  @Test
  void rowsThatAgreeSayItTogether() {
    LimitsTable table = fixed("p").row(FELL, "1", "2").row(Condition.ALWAYS, "1", "2").build();
    assertEquals(band("1", "2"), Limits.of(table, FELL_12).at(List.of()));
  }

  @Test
  void betweenRowsLimitsLieOnTheStraightLineExactly() {
    LimitsTable table =
        interpolated("p", "t").at(FELL, "10", "8.2", "10.4").at(FELL, "32", "12.1", "15.0").build();
    Band third = Limits.of(table, FELL_12).at(List.of(BigFraction.of(52, 3))).orElseThrow();
    assertEquals(BigFraction.of(82, 10).add(BigFraction.of(39, 10).divide(3)), third.low().get());
    assertEquals(BigFraction.of(104, 10).add(BigFraction.of(46, 10).divide(3)), third.high().get());
  }

  @Test
  void interpolationUsesTheRowsNextToTheValueInAnyWrittenOrder() {
    LimitsTable table =
        interpolated("p", "t")
            .at(FELL, "20", "6", "8")
            .at(FELL, "0", "0", "2")
            .at(FELL, "10", "4", "6")
            .build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("2", "4"), at(limits, "5"));
    assertEquals(band("5", "7"), at(limits, "15"));
    assertEquals(band("4", "6"), at(limits, "10"));
  }

  @Test
  void outsideTheFirstAndLastRowThereIsNothing() {
    LimitsTable table =
        interpolated("p", "t").at(FELL, "10", "1", "2").at(FELL, "20", "3", "4").build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("1", "2"), at(limits, "10"));
    assertEquals(band("3", "4"), at(limits, "20"));
    assertEquals(Optional.empty(), at(limits, "9.999999"));
    assertEquals(Optional.empty(), at(limits, "20.000001"));
    assertEquals(Optional.empty(), limits.at(List.of()));
    assertTrue(limits.followsDrivers());
  }

  @Test
  void aSinglePointHoldsOnlyThere() {
    LimitsTable table = interpolated("p", "t").at(FELL, "10", "1", "2").build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("1", "2"), at(limits, "10"));
    assertEquals(Optional.empty(), at(limits, "10.1"));
  }

  @Test
  void twoPointsAtOneValueThatDisagreeSayNothingThereNorBesideIt() {
    LimitsTable table =
        interpolated("p", "t")
            .at(FELL, "0", "1", "2")
            .at(FELL, "10", "1", "2")
            .at(FELL, "10", "1", "3")
            .build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(Optional.empty(), at(limits, "10"));
    assertEquals(Optional.empty(), at(limits, "5"));
    assertEquals(band("1", "2"), at(limits, "0"));
  }

  @Test
  void anEndThatOneRowLeavesOutIsOpenUpToTheNextRow() {
    LimitsTable table =
        interpolated("p", "t").at(FELL, "0", "-", "2").at(FELL, "10", "1", "4").build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("-", "3"), at(limits, "5"));
    assertEquals(band("1", "4"), at(limits, "10"));
  }

  @Test
  void aSharedEndBelongsToTheStretchThatStartsThere() {
    LimitsTable table =
        stepped("p", "t").over(FELL, "20", "30", "5", "6").over(FELL, "10", "20", "1", "2").build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("1", "2"), at(limits, "10"));
    assertEquals(band("1", "2"), at(limits, "19.999"));
    assertEquals(band("5", "6"), at(limits, "20"));
    assertEquals(band("5", "6"), at(limits, "30"));
    assertEquals(Optional.empty(), at(limits, "30.1"));
    assertEquals(Optional.empty(), at(limits, "9.9"));
  }

  @Test
  void aStretchOfOnePointStartsThere() {
    LimitsTable table =
        stepped("p", "t").over(FELL, "10", "20", "1", "2").over(FELL, "20", "20", "5", "6").build();
    assertEquals(band("5", "6"), at(Limits.of(table, FELL_12), "20"));
  }

  @Test
  void stretchesThatOverlapAndDisagreeSayNothingWhereTheyDo() {
    LimitsTable table =
        stepped("p", "t").over(FELL, "0", "20", "1", "2").over(FELL, "10", "30", "5", "6").build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("1", "2"), at(limits, "9"));
    assertEquals(Optional.empty(), at(limits, "10"));
    assertEquals(Optional.empty(), at(limits, "15"));
    assertEquals(band("5", "6"), at(limits, "25"));
  }

  @Test
  void aRowWithoutADriverCellHoldsAnywhere() {
    LimitsTable table = stepped("p", "t").row(FELL, "1", "2").build();
    Limits limits = Limits.of(table, FELL_12);
    assertEquals(band("1", "2"), limits.at(List.of()));
    assertEquals(band("1", "2"), at(limits, "99"));
    assertFalse(limits.followsDrivers());
  }

  @Test
  void bothEndsAreWithin() {
    Band band = band("1", "2").orElseThrow();
    assertEquals(Side.WITHIN, band.side(BigFraction.ONE));
    assertEquals(Side.WITHIN, band.side(BigFraction.of(2)));
    assertEquals(Side.BELOW, band.side(BigFraction.of(999_999_999, 1_000_000_000)));
    assertEquals(Side.ABOVE, band.side(BigFraction.of(2_000_000_001, 1_000_000_000)));
  }

  @Test
  void withoutAnEndNothingIsBeyondIt() {
    assertEquals(Side.WITHIN, band("-", "2").orElseThrow().side(BigFraction.of(-1_000_000)));
    assertEquals(Side.WITHIN, band("1", "-").orElseThrow().side(BigFraction.of(1_000_000)));
    assertEquals(Side.ABOVE, band("-", "2").orElseThrow().side(BigFraction.of(3)));
    assertEquals(Side.BELOW, band("1", "-").orElseThrow().side(BigFraction.ZERO));
  }

  private static Optional<Band> at(Limits limits, String driver) {
    return limits.at(List.of(Decimals.parse(driver)));
  }

  private static Optional<Band> band(String low, String high) {
    return Optional.of(new Band(end(low), end(high)));
  }

  private static Optional<BigFraction> end(String text) {
    return text.equals("-") ? Optional.empty() : Optional.of(Decimals.parse(text));
  }
}
