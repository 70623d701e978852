package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Systems small enough to be solved by hand. */
class LinearSystemTest {
  private static final LinearForm X = LinearForm.variable(3, 0);
  private static final LinearForm Y = LinearForm.variable(3, 1);
  private static final LinearForm Z = LinearForm.variable(3, 2);
  private static final BigFraction ZERO = BigFraction.ZERO;
  private static final Interval POSITIVE = Interval.above(ZERO);
  private static final Interval UNIT = Interval.closed(ZERO, BigFraction.ONE);

  private static LinearSystem cube() {
    return LinearSystem.free(3).with(X, UNIT).with(Y, UNIT).with(Z, UNIT);
  }

  private static Optional<Interval> between(int low, boolean closed, int high, boolean shut) {
    return Optional.of(
        new Interval(
            Optional.of(new End(BigFraction.of(low), closed)),
            Optional.of(new End(BigFraction.of(high), shut))));
  }

  @Test
  void imageOfASumOverACubeReachesItsCorners() {
    assertEquals(between(0, true, 3, true), cube().image(X.plus(Y).plus(Z)));
    assertEquals(between(-2, true, 1, true), cube().image(X.minus(Y).minus(Z)));
  }

  @Test
  void strictEndsStayStrict() {
    LinearSystem open = cube().with(X.minus(Y), POSITIVE);
    assertEquals(between(0, false, 1, true), open.image(X));
    assertEquals(between(0, true, 1, false), open.image(Y));
    assertEquals(between(0, false, 1, true), open.image(X.minus(Y)));
  }

  @Test
  void aCircleOfInequalitiesHasASolutionOnlyIfNoneIsStrict() {
    Interval atLeast = Interval.atLeast(ZERO);
    LinearSystem equal =
        cube().with(X.minus(Y), atLeast).with(Y.minus(Z), atLeast).with(Z.minus(X), atLeast);
    assertEquals(between(0, true, 0, true), equal.image(X.minus(Z)));
    assertFalse(equal.with(X.minus(Z), POSITIVE).isSolvable());
  }

  @Test
  void touchingIsAPointAndPassingIsNothing() {
    LinearForm sum = X.plus(Y);
    assertTrue(cube().with(sum, Interval.atLeast(BigFraction.of(2))).isSolvable());
    assertFalse(cube().with(sum, Interval.above(BigFraction.of(2))).isSolvable());
    assertEquals(
        between(1, true, 1, true), cube().with(sum, Interval.atLeast(BigFraction.of(2))).image(X));
  }

  @Test
  void fractionsAreExact() {
    LinearForm third = X.times(BigFraction.of(3)).plus(BigFraction.of(-1));
    Interval point = Interval.point(ZERO);
    assertEquals(
        Optional.of(Interval.point(BigFraction.of(1, 3))), cube().with(third, point).image(X));
  }

  @Test
  void aFormWithoutVariablesHasItsValueWhereThereIsASolution() {
    LinearForm seven = LinearForm.constant(3, BigFraction.of(7));
    assertEquals(between(7, true, 7, true), cube().image(seven));
    assertEquals(Optional.empty(), cube().with(X, Interval.below(ZERO)).image(seven));
    assertFalse(LinearSystem.free(3).with(seven, Interval.below(ZERO)).isSolvable());
  }
}
