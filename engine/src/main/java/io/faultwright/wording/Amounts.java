package io.faultwright.wording;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Amounts and intervals as the rule language writes them. */
final class Amounts {
  /** In the units of the rule language, readable by it. */
  static final Amounts AS_WRITTEN = new Amounts(Display.AS_WRITTEN);

  private static final MathContext ABOUT = new MathContext(4, RoundingMode.HALF_UP);

  private static final Pattern AMOUNT =
      Pattern.compile("([+-]?\\d{1,18}(?:\\.\\d{1,18})?) ?(\\S+)");

  private final Display display;

  Amounts(Display display) {
    this.display = display;
  }

  /** An amount with its unit. */
  String amount(BigFraction value, Scale scale) {
    return Display.join(display.figures(value, scale), Figure::words);
  }

  /** An amount for a column whose heading says {@link #unit}. */
  String number(BigFraction value, Scale scale) {
    return Display.join(display.column(value, scale), Figure::number);
  }

  /** Both ends of a stretch for a column whose heading says {@link #unit}. */
  String numbers(Optional<BigFraction> low, Optional<BigFraction> high, Scale scale) {
    if (low.isEmpty() || high.isEmpty()) {
      return low.map(end -> display.say().say("from {0}", number(end, scale)))
          .or(() -> high.map(end -> display.say().say("up to {0}", number(end, scale))))
          .orElse(display.say().say("no limit"));
    }
    List<Figure> from = display.column(low.get(), scale);
    List<Figure> to = display.column(high.get(), scale);
    return Display.join(
        IntStream.range(0, from.size()).boxed().toList(),
        i -> from.get(i).number() + "\u00A0–\u00A0" + to.get(i).number());
  }

  /** The unit, or both. */
  String unit(Scale scale) {
    return Display.join(display.units(scale.unit()), Unit::symbol);
  }

  /** A text that is an amount and nothing else, converted; any other text as it is. */
  String text(String written) {
    Matcher parts = AMOUNT.matcher(written);
    return parts.matches()
        ? Units.find(parts.group(2))
            .map(unit -> converted(written, Decimals.parse(parts.group(1)), unit))
            .orElse(written)
        : written;
  }

  private String converted(String written, BigFraction value, Unit unit) {
    Scale scale = new Scale(unit, Optional.empty());
    return Display.join(
        display.figures(value, scale),
        form -> form.unit().equals(unit) ? display.say().figure(written) : form.words());
  }

  /** What is read to; empty where it is not said. */
  Optional<String> resolution(Scale scale) {
    return scale
        .resolution()
        .map(step -> Display.join(display.steps(step, scale.unit()), Figure::words));
  }

  /** An amount in its own unit, rounded to four digits and marked as such where it has more. */
  static String about(BigFraction value, Unit unit) {
    BigDecimal numerator = new BigDecimal(value.getNumerator());
    BigDecimal rounded = numerator.divide(new BigDecimal(value.getDenominator()), ABOUT);
    BigFraction shown = Decimals.parse(rounded.toPlainString());
    return (shown.equals(value) ? "" : "about ") + Decimals.show(shown) + " " + unit.symbol();
  }

  /** The words for an interval; half-open intervals need two, see {@link #halves}. */
  String interval(Interval interval, Scale scale) {
    return halves(interval, scale)
        .reduce((low, high) -> display.say().say("{0} and {1}", low, high))
        .orElseGet(() -> display.say().say("any"));
  }

  /** The patterns that together say the interval: none, one or two. */
  Stream<String> halves(Interval interval, Scale scale) {
    return closed(interval, scale)
        .map(Stream::of)
        .orElseGet(
            () ->
                Stream.concat(
                    interval.low().stream().map(end -> low(end, scale)),
                    interval.high().stream().map(end -> high(end, scale))));
  }

  private String low(End end, Scale scale) {
    String amount = amount(end.value(), scale);
    return end.included()
        ? display.say().say("at least {0}", amount)
        : display.say().say("above {0}", amount);
  }

  private String high(End end, Scale scale) {
    String amount = amount(end.value(), scale);
    return end.included()
        ? display.say().say("at most {0}", amount)
        : display.say().say("below {0}", amount);
  }

  private Optional<String> closed(Interval interval, Scale scale) {
    return interval
        .low()
        .filter(End::included)
        .flatMap(
            low ->
                interval
                    .high()
                    .filter(End::included)
                    .flatMap(high -> stretch(low.value(), high.value(), scale)));
  }

  /** Both ends in one pattern, which takes one unit for both. */
  private Optional<String> stretch(BigFraction low, BigFraction high, Scale scale) {
    if (low.equals(high)) {
      return Optional.of(amount(low, scale));
    }
    List<Figure> from = display.figures(low, scale);
    List<Figure> to = display.figures(high, scale);
    return Optional.of(IntStream.range(0, from.size()).boxed().toList())
        .filter(forms -> units(from).equals(units(to)))
        .map(
            forms ->
                Display.join(
                    forms,
                    i -> display.say().say("{0} to {1}", from.get(i).number(), to.get(i).words())));
  }

  private static List<Unit> units(List<Figure> figures) {
    return figures.stream().map(Figure::unit).toList();
  }
}
