package io.faultwright.dmn;

import io.faultwright.model.Slope;
import io.faultwright.model.Sorted;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A sum of readings that are put in, each with a factor.
 *
 * @param factors by the id of the reading
 * @param constant what is added
 */
record Sum(SortedMap<String, BigFraction> factors, BigFraction constant) {
  Sum {
    factors = Sorted.copy(factors);
  }

  static Sum of(BigFraction number) {
    return new Sum(new TreeMap<>(), number);
  }

  static Sum of(String reading) {
    return new Sum(new TreeMap<>(Map.of(reading, BigFraction.ONE)), BigFraction.ZERO);
  }

  /** A figure that follows quantities, each of which is a sum. */
  static Sum of(Slope slope, List<Sum> drivers) {
    Sum sum = of(slope.constant());
    for (int i = 0; i < slope.factors().size(); i++) {
      sum = sum.plus(drivers.get(i).times(slope.factors().get(i)));
    }
    return sum;
  }

  Sum plus(Sum other) {
    SortedMap<String, BigFraction> both = new TreeMap<>(factors);
    other.factors.forEach((reading, factor) -> both.merge(reading, factor, BigFraction::add));
    return new Sum(both, constant.add(other.constant));
  }

  Sum times(BigFraction number) {
    SortedMap<String, BigFraction> products = new TreeMap<>();
    factors.forEach((reading, factor) -> products.put(reading, factor.multiply(number)));
    return new Sum(products, constant.multiply(number));
  }

  /** Every number in it. */
  List<BigFraction> numbers() {
    List<BigFraction> numbers = new ArrayList<>(factors.values());
    numbers.add(constant);
    return numbers;
  }
}
