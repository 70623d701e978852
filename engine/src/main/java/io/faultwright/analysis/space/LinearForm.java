package io.faultwright.analysis.space;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A sum of numbered variables, each with a factor, and a constant.
 *
 * @param factors one for every variable, zero where it does not occur
 * @param constant what is added
 */
record LinearForm(List<BigFraction> factors, BigFraction constant) {
  LinearForm {
    factors = List.copyOf(factors);
  }

  /** The same value everywhere. */
  static LinearForm constant(int variables, BigFraction value) {
    return new LinearForm(Collections.nCopies(variables, BigFraction.ZERO), value);
  }

  /** The value of one variable. */
  static LinearForm variable(int variables, int which) {
    List<BigFraction> factors = new ArrayList<>(Collections.nCopies(variables, BigFraction.ZERO));
    factors.set(which, BigFraction.ONE);
    return new LinearForm(factors, BigFraction.ZERO);
  }

  BigFraction factor(int variable) {
    return factors.get(variable);
  }

  /** The variables that occur, in ascending order. */
  IntStream variables() {
    return IntStream.range(0, factors.size()).filter(i -> factors.get(i).signum() != 0);
  }

  /** The value where the variables have these values. */
  BigFraction at(List<BigFraction> values) {
    return variables()
        .mapToObj(i -> factor(i).multiply(values.get(i)))
        .reduce(constant, BigFraction::add);
  }

  LinearForm plus(LinearForm other) {
    List<BigFraction> sums = new ArrayList<>(factors.size());
    for (int i = 0; i < factors.size(); i++) {
      sums.add(sum(factor(i), other.factor(i)));
    }
    return new LinearForm(sums, sum(constant, other.constant));
  }

  /** Zeros are frequent, and cheap this way. */
  private static BigFraction sum(BigFraction a, BigFraction b) {
    if (a.signum() == 0) {
      return b;
    }
    return b.signum() == 0 ? a : a.add(b);
  }

  LinearForm plus(BigFraction number) {
    return new LinearForm(factors, constant.add(number));
  }

  LinearForm minus(LinearForm other) {
    return plus(other.negated());
  }

  LinearForm negated() {
    return times(BigFraction.ONE.negate());
  }

  LinearForm times(BigFraction number) {
    List<BigFraction> products = new ArrayList<>(factors.size());
    factors.forEach(factor -> products.add(product(factor, number)));
    return new LinearForm(products, product(constant, number));
  }

  private static BigFraction product(BigFraction a, BigFraction b) {
    return a.signum() == 0 ? a : a.multiply(b);
  }

  /** The form with a variable replaced by another form. */
  LinearForm with(int variable, LinearForm replacement) {
    BigFraction factor = factor(variable);
    if (factor.signum() == 0) {
      return this;
    }
    List<BigFraction> rest = new ArrayList<>(factors);
    rest.set(variable, BigFraction.ZERO);
    return new LinearForm(rest, constant).plus(replacement.times(factor));
  }
}
