package io.faultwright.resolve;

import io.faultwright.quantity.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** The words that compare a value with a threshold. */
enum Comparison {
  ABOVE(order -> order > 0, Interval::above),
  AT_LEAST(order -> order >= 0, Interval::atLeast),
  BELOW(order -> order < 0, Interval::below),
  AT_MOST(order -> order <= 0, Interval::atMost);

  /**
   * A comparison and the threshold behind it.
   *
   * @param comparison the words
   * @param threshold the text behind them
   */
  record Written(Comparison comparison, String threshold) {}

  private final IntPredicate accepts;
  private final Function<BigFraction, Interval> interval;

  Comparison(IntPredicate accepts, Function<BigFraction, Interval> interval) {
    this.accepts = accepts;
    this.interval = interval;
  }

  /** Whether it holds for a value that compares with the threshold like this. */
  boolean accepts(int order) {
    return accepts.test(order);
  }

  /** The values it holds for. */
  Interval of(BigFraction threshold) {
    return interval.apply(threshold);
  }

  /** For instance {@code at least}. */
  String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static List<String> allWords() {
    return Arrays.stream(values()).map(Comparison::words).toList();
  }

  /** The comparison a text begins with, if it begins with one. */
  static Optional<Written> read(String text) {
    return Arrays.stream(values())
        .filter(comparison -> text.startsWith(comparison.words() + " "))
        .map(comparison -> new Written(comparison, rest(text, comparison)))
        .findFirst();
  }

  private static String rest(String text, Comparison comparison) {
    return text.substring(comparison.words().length()).strip();
  }
}
