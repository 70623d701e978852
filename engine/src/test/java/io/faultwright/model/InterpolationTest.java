package io.faultwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.quantity.Decimals;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Limits along one and two readings at seeded random points, against weights of the corners worked
 * out here: the simplices of Kuhn, "Some combinatorial lemmas in topology", IBM Journal of Research
 * and Development 4, 1960.
 */
class InterpolationTest {
  private static final int POINTS = 10_000;
  private static final int SIZE = 4;
  private static final Build BUILD =
      new KnowledgeBaseBuilder().model("A", "a", Map.of()).build().equipment().builds().get(0);

  private final Random random = new Random(20);
  private final int[] columns = steps();
  private final int[] lines = steps();
  private final int[][] low = new int[SIZE][SIZE];
  private final Limits limits = limits();

  private int[] steps() {
    int[] steps = new int[SIZE];
    for (int i = 0, at = -10; i < SIZE; i++) {
      steps[i] = at;
      at += 1 + random.nextInt(12);
    }
    return steps;
  }

  private Limits limits() {
    LimitsTableBuilder table = LimitsTableBuilder.sloping("p", "x", "y");
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        low[i][j] = random.nextInt(50);
        table.at(
            Condition.ALWAYS, "" + columns[i], "" + lines[j], "" + low[i][j], "" + (low[i][j] + 3));
      }
    }
    return Limits.of(table.build(), BUILD);
  }

  private BigFraction between(int[] steps) {
    int width = steps[SIZE - 1] - steps[0];
    return BigFraction.of(steps[0]).add(BigFraction.of(random.nextInt(997 * width), 997));
  }

  @Test
  void twoWayLimitsEqualTheWeightedCorners() {
    for (int i = 0; i < POINTS; i++) {
      List<BigFraction> at = List.of(between(columns), between(lines));
      BigFraction expected = weighted(at);
      Band band = limits.at(at).orElseThrow();
      assertEquals(expected, band.low().get());
      assertEquals(expected.add(3), band.high().get());
    }
  }

  private static int cell(int[] steps, BigFraction at) {
    int cell = 0;
    while (cell + 2 < SIZE && at.compareTo(BigFraction.of(steps[cell + 1])) >= 0) {
      cell++;
    }
    return cell;
  }

  private static BigFraction part(int[] steps, int cell, BigFraction at) {
    return at.subtract(steps[cell]).divide(steps[cell + 1] - steps[cell]);
  }

  /** The larger part first: what is left to 1, the difference, the smaller part. */
  private BigFraction weighted(List<BigFraction> at) {
    int i = cell(columns, at.get(0));
    int j = cell(lines, at.get(1));
    BigFraction x = part(columns, i, at.get(0));
    BigFraction y = part(lines, j, at.get(1));
    boolean alongFirst = x.compareTo(y) >= 0;
    BigFraction larger = alongFirst ? x : y;
    BigFraction smaller = alongFirst ? y : x;
    int middle = alongFirst ? low[i + 1][j] : low[i][j + 1];
    return BigFraction.ONE
        .subtract(larger)
        .multiply(low[i][j])
        .add(larger.subtract(smaller).multiply(middle))
        .add(smaller.multiply(low[i + 1][j + 1]));
  }

  /** A step of a millionth moves the limits by a few millionths, also over lines and diagonals. */
  @Test
  void twoWayLimitsAreContinuous() {
    BigFraction step = BigFraction.of(1, 1_000_000);
    for (int i = 0; i < POINTS; i++) {
      BigFraction x = i % 3 == 0 ? BigFraction.of(columns[1 + i % 2]) : between(columns);
      BigFraction y = i % 3 == 1 ? onDiagonal(x) : between(lines);
      BigFraction here = limits.at(List.of(x, y)).orElseThrow().low().get();
      for (BigFraction dx : List.of(step, step.negate())) {
        for (BigFraction dy : List.of(step, step.negate())) {
          Optional<Band> there = limits.at(List.of(x.add(dx), y.add(dy)));
          there.ifPresent(
              band ->
                  assertTrue(
                      band.low().get().subtract(here).abs().compareTo(step.multiply(100)) <= 0));
        }
      }
    }
  }

  private BigFraction onDiagonal(BigFraction x) {
    int i = cell(columns, x);
    int j = random.nextInt(SIZE - 1);
    BigFraction height = BigFraction.of(lines[j + 1] - lines[j]);
    return BigFraction.of(lines[j]).add(part(columns, i, x).multiply(height));
  }

  @Test
  void limitsAlongOneReadingEqualTheWeightedEnds() {
    LimitsTable table =
        LimitsTableBuilder.interpolated("p", "x")
            .at(Condition.ALWAYS, "" + columns[0], "5", "9")
            .at(Condition.ALWAYS, "" + columns[1], "2", "3")
            .at(Condition.ALWAYS, "" + columns[3], "8", "20")
            .build();
    Limits along = Limits.of(table, BUILD);
    for (int i = 0; i < POINTS; i++) {
      BigFraction at = between(columns);
      boolean left = at.compareTo(BigFraction.of(columns[1])) < 0;
      int from = left ? columns[0] : columns[1];
      int to = left ? columns[1] : columns[3];
      BigFraction part = at.subtract(from).divide(to - from);
      BigFraction whole = BigFraction.ONE;
      BigFraction expected =
          whole.subtract(part).multiply(left ? 9 : 3).add(part.multiply(left ? 3 : 20));
      assertEquals(expected, along.at(List.of(at)).orElseThrow().high().get());
    }
  }

  @Test
  void outsideTheGridThereIsNothing() {
    BigFraction inside = BigFraction.of(columns[1]);
    BigFraction beyond = BigFraction.of(lines[SIZE - 1]).add(BigFraction.of(1, 1000));
    assertEquals(Optional.empty(), limits.at(List.of(inside, beyond)));
    assertEquals(Optional.empty(), limits.at(List.of(inside)));
  }

  /** Three corners of four: one triangle has figures, and so has each side that has both ends. */
  @Test
  void aMissingCornerLeavesOutWhatItHoldsUp() {
    LimitsTable table =
        LimitsTableBuilder.sloping("p", "x", "y")
            .at(Condition.ALWAYS, "0", "0", "0", "10")
            .at(Condition.ALWAYS, "10", "0", "10", "20")
            .at(Condition.ALWAYS, "10", "10", "20", "30")
            .build();
    Limits some = Limits.of(table, BUILD);
    assertEquals(Optional.of(BigFraction.of(8)), low(some, "6", "2"));
    assertEquals(Optional.of(BigFraction.of(12)), low(some, "6", "6"));
    assertEquals(Optional.empty(), low(some, "2", "6"));
    assertEquals(Optional.empty(), low(some, "0", "5"));
    assertEquals(Optional.of(BigFraction.of(15)), low(some, "10", "5"));
    assertEquals(Optional.of(BigFraction.of(10)), low(some, "10", "0"));
    assertEquals(Optional.empty(), low(some, "0", "10"));
  }

  private static Optional<BigFraction> low(Limits limits, String x, String y) {
    List<BigFraction> at = List.of(Decimals.parse(x), Decimals.parse(y));
    return limits.at(at).flatMap(Band::low);
  }
}
