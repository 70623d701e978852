package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTableBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Where limits change along what they follow; crossings worked out by hand. */
class LimitsCurveTest {
  private static final List<Build> BUILDS =
      new KnowledgeBaseBuilder()
          .model("A-1", "alpha", Map.of())
          .model("B-1", "beta", Map.of())
          .build()
          .equipment()
          .builds();

  private static final Condition ANY = Condition.ALWAYS;

  private static LimitsCurve on(int build, LimitsTableBuilder table) {
    LimitsTable built = table.build();
    return LimitsCurve.of(built, BUILDS.get(build));
  }

  private static BigFraction half(int halves) {
    return BigFraction.of(halves, 2);
  }

  /** Cuts around these values, given in halves. */
  private static SortedSet<Cut> around(int... halves) {
    SortedSet<Cut> cuts = new TreeSet<>();
    Arrays.stream(halves).forEach(value -> cuts.addAll(Cut.around(half(value))));
    return cuts;
  }

  private static SortedSet<Cut> cuts(LimitsCurve curve, int driver, int... marksInHalves) {
    SortedSet<BigFraction> marks = new TreeSet<>();
    Arrays.stream(marksInHalves).forEach(value -> marks.add(half(value)));
    return curve.cuts(driver, marks);
  }

  /** The low limit runs from 2 to 4 and is 3 at 5; the high one falls from 9 to 4, 8 at 2. */
  @Test
  void whereALimitPassesAMark() {
    LimitsCurve curve =
        on(
            0,
            LimitsTableBuilder.interpolated("m", "d")
                .at(ANY, "0", "2", "9")
                .at(ANY, "10", "4", "4"));
    assertEquals(around(0, 10, 20), cuts(curve, 0, 6));
    assertEquals(around(0, 4, 20), cuts(curve, 0, 16));
    assertEquals(around(0, 20), cuts(curve, 0, 0, 2, 4, 18, 20));
    assertEquals(around(0, 4, 10, 12, 20), cuts(curve, 0, 6, 12, 16));
  }

  @Test
  void flatAndMissingLimitsPassNothing() {
    LimitsCurve curve =
        on(
            0,
            LimitsTableBuilder.interpolated("m", "d")
                .at(ANY, "0", "2", "-")
                .at(ANY, "10", "2", "4"));
    assertEquals(around(0, 20), cuts(curve, 0, 2, 4, 6, 8));
  }

  /** Written in any order the rows stand in the order of the driver: 1 to 3, then 3 to 1. */
  @Test
  void rowsAreTakenInTheOrderOfTheDriver() {
    LimitsCurve curve =
        on(
            0,
            LimitsTableBuilder.interpolated("m", "d")
                .at(ANY, "10", "1", "-")
                .at(ANY, "0", "1", "-")
                .at(ANY, "5", "3", "-"));
    assertEquals(around(0, 5, 10, 15, 20), cuts(curve, 0, 4));
  }

  @Test
  void stepsAreCutAtTheirEndsOnly() {
    LimitsCurve curve =
        on(
            0,
            LimitsTableBuilder.stepped("m", "d")
                .over(ANY, "0", "5", "1", "-")
                .over(ANY, "5", "9", "3", "-"));
    assertEquals(around(0, 10, 18), cuts(curve, 0, 4));
    assertFalse(curve.slopesBothWays());
  }

  @Test
  void onlyTheRowsOfTheBuild() {
    LimitsTableBuilder table =
        LimitsTableBuilder.interpolated("m", "d", "family")
            .at(is("family", "alpha"), "0", "2", "-")
            .at(is("family", "alpha"), "10", "4", "-")
            .at(not(is("family", "alpha")), "1", "4", "-")
            .at(not(is("family", "alpha")), "9", "2", "-");
    assertEquals(around(0, 10, 20), cuts(on(0, table), 0, 6));
    assertEquals(around(2, 10, 18), cuts(on(1, table), 0, 6));
    assertEquals(2, on(1, table).rows().size());
    assertEquals(
        Optional.of(new Band(Optional.of(half(6)), Optional.empty())),
        on(0, table).at(List.of(half(10))));
    assertEquals(Optional.empty(), on(1, table).at(List.of(half(1))));
  }

  @Test
  void alongTwoDriversEachIsCutAtItsOwnRows() {
    LimitsTableBuilder table =
        LimitsTableBuilder.sloping("m", "d", "e")
            .at(ANY, "0", "1", "2", "-")
            .at(ANY, "10", "1", "4", "-")
            .at(ANY, "0", "7", "2", "-")
            .at(ANY, "10", "7", "4", "-");
    LimitsCurve curve = on(0, table);
    assertTrue(curve.slopesBothWays());
    assertEquals(around(0, 20), cuts(curve, 0, 6));
    assertEquals(around(2, 14), cuts(curve, 1, 6));
    assertEquals(2, new ArrayList<>(curve.facets(List.of(half(10), half(8)))).size());
  }
}
