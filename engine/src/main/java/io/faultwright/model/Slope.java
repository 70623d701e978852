package io.faultwright.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A figure that changes evenly with the readings it follows.
 *
 * @param constant where all of them are zero
 * @param factors by how much it grows with each of them
 */
public record Slope(BigFraction constant, List<BigFraction> factors) {
  public Slope {
    factors = List.copyOf(factors);
  }

  /** The same figure everywhere. */
  static Slope flat(int drivers, BigFraction figure) {
    return new Slope(figure, Collections.nCopies(drivers, BigFraction.ZERO));
  }

  /** Zero at one value of a driver and one at another, whatever the other drivers are. */
  static Slope between(int drivers, int driver, BigFraction zero, BigFraction one) {
    BigFraction factor = one.subtract(zero).reciprocal();
    return flat(drivers, BigFraction.ZERO).plus(driver, factor, zero);
  }

  private Slope plus(int driver, BigFraction factor, BigFraction zero) {
    List<BigFraction> changed = new ArrayList<>(factors);
    changed.set(driver, factors.get(driver).add(factor));
    return new Slope(constant.subtract(factor.multiply(zero)), changed);
  }

  /** The figure where the drivers have these values. */
  public BigFraction at(List<BigFraction> drivers) {
    BigFraction sum = constant;
    for (int i = 0; i < factors.size(); i++) {
      if (factors.get(i).signum() != 0) {
        sum = sum.add(factors.get(i).multiply(drivers.get(i)));
      }
    }
    return sum;
  }

  Slope plus(Slope other) {
    List<BigFraction> sums = new ArrayList<>();
    for (int i = 0; i < factors.size(); i++) {
      sums.add(factors.get(i).add(other.factors.get(i)));
    }
    return new Slope(constant.add(other.constant), sums);
  }

  Slope times(BigFraction factor) {
    return new Slope(
        constant.multiply(factor), factors.stream().map(each -> each.multiply(factor)).toList());
  }
}
