package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads numbers with or without a unit, and stretches such as {@code 4 to 8 K}. */
public final class QuantityParser {
  private static final Pattern NUMBER = Pattern.compile("([+-]?\\d{1,18}(?:\\.\\d{1,18})?)(.*)");
  private static final Pattern GARBLED =
      Pattern.compile("[\\d.,_].*|\\s+[\\d.,_+-].*|[xX][0-9a-fA-F]+.*|[eE][+-]?\\d.*");
  private static final Pattern STRETCH = Pattern.compile("(.+?)\\s+to\\s+(.+)");

  /**
   * A number as it was written.
   *
   * @param number its value
   * @param unit the text behind it; empty without a unit
   */
  private record Written(BigFraction number, String unit) {}

  private final Problems problems;

  public QuantityParser(Problems problems) {
    this.problems = problems;
  }

  /** Whether the text has the form of a stretch. */
  public static boolean isStretch(String text) {
    return STRETCH.matcher(text).matches();
  }

  /**
   * The number a text stands for, in the wanted unit; a number without a unit has it already.
   *
   * @param whose what has that unit, for messages
   */
  public Optional<BigFraction> number(Place place, String text, Unit wanted, String whose) {
    return written(place, text)
        .flatMap(written -> convert(place, written, written.unit(), wanted, whose));
  }

  /**
   * As above, for a value that has to lie in a range; the range may tell which pressure is meant.
   */
  Optional<BigFraction> number(
      Place place, String text, Unit wanted, String whose, Interval range) {
    Optional<Written> found = written(place, text);
    Optional<Unit> unit =
        found.filter(one -> !one.unit().isEmpty()).flatMap(one -> Units.find(one.unit()));
    if (unit.isPresent() && PressureAdvice.isMixedUp(unit.get(), wanted)) {
      problems.add(
          place,
          UnitAdvice.mismatch(unit.get(), wanted, whose),
          PressureAdvice.help(found.get().number(), unit.get(), wanted, range));
      return Optional.empty();
    }
    return found.flatMap(one -> convert(place, one, one.unit(), wanted, whose));
  }

  /** A stretch with both ends included; a unit behind the second number holds for both. */
  public Optional<Interval> stretch(Place place, String text, Unit wanted, String whose) {
    Matcher parts = STRETCH.matcher(clean(text));
    if (!parts.matches()) {
      problems.add(
          place,
          "expected a stretch such as `4 to 8`, found " + Words.quoted(text),
          "write the lower end, `to`, the upper end");
      return Optional.empty();
    }
    Optional<Written> low = written(place, parts.group(1));
    Optional<Written> high = written(place, parts.group(2));
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    return ends(place, low.get(), high.get(), wanted, whose);
  }

  /** The unit with this symbol, where it is one of the wanted kind. */
  public Optional<Unit> unit(Place place, String symbol, Unit wanted, String whose) {
    return unit(place, symbol).filter(unit -> fits(place, unit, wanted, whose));
  }

  private Optional<Interval> ends(
      Place place, Written low, Written high, Unit wanted, String whose) {
    String lowUnit = low.unit().isEmpty() ? high.unit() : low.unit();
    String highUnit = high.unit().isEmpty() ? low.unit() : high.unit();
    Optional<BigFraction> from = convert(place, low, lowUnit, wanted, whose);
    Optional<BigFraction> to = convert(place, high, highUnit, wanted, whose);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    return ordered(place, from.get(), to.get(), wanted);
  }

  private Optional<Interval> ordered(Place place, BigFraction low, BigFraction high, Unit unit) {
    if (low.compareTo(high) > 0) {
      String mended = Decimals.show(high) + " to " + Decimals.show(low) + " " + unit;
      problems.add(place, "the lower end is greater than the upper end", "write `" + mended + "`");
      return Optional.empty();
    }
    return Optional.of(Interval.closed(low, high));
  }

  private Optional<Written> written(Place place, String text) {
    String clean = clean(text);
    Matcher parts = NUMBER.matcher(clean);
    if (!parts.matches() || isGarbled(parts.group(2))) {
      problems.add(
          place, "expected a number, found " + Words.quoted(text), NumberAdvice.help(clean));
      return Optional.empty();
    }
    return Optional.of(new Written(Decimals.parse(parts.group(1)), parts.group(2).strip()));
  }

  private static boolean isGarbled(String rest) {
    return GARBLED.matcher(rest).matches();
  }

  private static String clean(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ').replace('\n', ' ').strip();
  }

  private Optional<BigFraction> convert(
      Place place, Written written, String symbol, Unit wanted, String whose) {
    if (symbol.isEmpty()) {
      return Optional.of(written.number());
    }
    return unit(place, symbol)
        .filter(unit -> fits(place, unit, wanted, whose))
        .map(unit -> unit.convert(written.number(), wanted));
  }

  /** The unit with this symbol; reports it where there is none. */
  Optional<Unit> unit(Place place, String symbol) {
    Optional<Unit> unit = Units.find(symbol);
    if (unit.isEmpty()) {
      problems.add(
          place, "unknown unit " + Words.quoted(symbol), UnitAdvice.helpForUnknown(symbol));
    }
    return unit;
  }

  private boolean fits(Place place, Unit found, Unit wanted, String whose) {
    if (found.dimension() != wanted.dimension()) {
      problems.add(
          place,
          UnitAdvice.mismatch(found, wanted, whose),
          UnitAdvice.helpForMismatch(found, wanted));
      return false;
    }
    return true;
  }
}
