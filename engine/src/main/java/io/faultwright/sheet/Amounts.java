package io.faultwright.sheet;

import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.resolve.QuantityParser;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a cell of numbers says, exactly: one value, or the two ends of a stretch.
 *
 * @param values one or two, in one unit
 */
record Amounts(List<BigFraction> values) {
  /** Digits that the rule language reads, before and behind the full stop. */
  private static final int DIGITS = 18;

  Amounts {
    values = List.copyOf(values);
  }

  /** The amounts a text stands for in a unit; empty where it is no number and no stretch. */
  static Optional<Amounts> of(String text, Unit unit) {
    QuantityParser parser = new QuantityParser(new Problems());
    if (!QuantityParser.isStretch(text)) {
      return parser
          .number(TableRow.NOWHERE, text, unit, "it")
          .map(value -> new Amounts(List.of(value)));
    }
    return parser.stretch(TableRow.NOWHERE, text, unit, "it").map(Amounts::ends);
  }

  private static Amounts ends(Interval stretch) {
    return new Amounts(
        List.of(stretch.low().orElseThrow().value(), stretch.high().orElseThrow().value()));
  }

  /** The same in another unit of the same kind. */
  Amounts convert(Unit from, Unit to) {
    return new Amounts(values.stream().map(value -> from.convert(value, to)).toList());
  }

  /** The only value as a decimal number, where it has a finite one of few digits. */
  Optional<BigDecimal> number() {
    return values.size() == 1 ? decimal(values.get(0)) : Optional.empty();
  }

  /** Plain digits, with {@code to} between two ends; empty where a value has no finite decimals. */
  Optional<String> plain() {
    List<BigDecimal> decimals = values.stream().flatMap(value -> decimal(value).stream()).toList();
    return Optional.of(decimals.stream().map(BigDecimal::toPlainString))
        .filter(all -> decimals.size() == values.size())
        .map(all -> all.collect(Collectors.joining(" to ")));
  }

  private static Optional<BigDecimal> decimal(BigFraction value) {
    try {
      BigDecimal exact =
          new BigDecimal(value.getNumerator()).divide(new BigDecimal(value.getDenominator()));
      BigDecimal plain = exact.stripTrailingZeros();
      BigDecimal shown = plain.scale() < 0 ? plain.setScale(0) : plain;
      return Optional.of(shown).filter(Amounts::isShort);
    } catch (ArithmeticException endless) {
      return Optional.empty();
    }
  }

  private static boolean isShort(BigDecimal number) {
    BigInteger whole = number.toBigInteger().abs();
    return number.scale() <= DIGITS && whole.toString().length() <= DIGITS;
  }
}
