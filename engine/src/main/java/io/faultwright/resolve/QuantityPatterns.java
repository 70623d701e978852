package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads what a measured reading must be. */
final class QuantityPatterns {
  private static final Map<String, Set<Side>> LIMITS =
      Map.of(
          "below limits", Set.of(Side.BELOW),
          "within limits", Set.of(Side.WITHIN),
          "above limits", Set.of(Side.ABOVE),
          "outside limits", Set.of(Side.BELOW, Side.ABOVE));
  private static final java.util.regex.Pattern ABOUT_LIMITS =
      java.util.regex.Pattern.compile(".* limits?");
  private static final java.util.regex.Pattern WORDS =
      java.util.regex.Pattern.compile("[\\p{Alpha}<>=≤≥≠~].*");
  private static final List<String> LIMITS_WORDS = LIMITS.keySet().stream().sorted().toList();

  private final QuantityParser quantities;
  private final Problems problems;

  QuantityPatterns(QuantityParser quantities, Problems problems) {
    this.quantities = quantities;
    this.problems = problems;
  }

  Optional<Pattern> read(Place place, String text, Subject.Quantity subject) {
    if (ABOUT_LIMITS.matcher(text).matches()) {
      return limits(place, text, subject);
    }
    if (Comparison.allWords().contains(text)) {
      problems.add(
          place, Words.quoted(text) + " without a number", "write it as in `" + text + " 65`");
      return Optional.empty();
    }
    Optional<Comparison.Written> comparison = Comparison.read(text);
    if (comparison.isPresent()) {
      return compared(place, comparison.get(), subject);
    }
    if (QuantityParser.isStretch(text)) {
      return stretch(place, text, subject).map(InInterval::new);
    }
    return looksLikeWords(text)
        ? unknownPattern(place, text, subject)
        : amount(place, text, subject).map(Interval::point).map(InInterval::new);
  }

  private static boolean looksLikeWords(String text) {
    return WORDS.matcher(text).matches();
  }

  private Optional<Pattern> unknownPattern(Place place, String text, Subject.Quantity subject) {
    problems.add(
        place,
        Words.quoted(text)
            + " says nothing about the measured reading "
            + Words.quoted(subject.id()),
        helpForPattern(text));
    return Optional.empty();
  }

  private static String helpForPattern(String text) {
    String forms =
        "write `above 65`, `at least 65`, `below 65`, `at most 65`, `4 to 8` or `above limits`";
    String firstWord = text.split("[\\s\\d]", 2)[0];
    return NearMatch.of(firstWord, Comparison.allWords())
        .filter(word -> firstWord.length() > 2)
        .map(word -> "did you mean `" + word + "`?")
        .orElse(forms);
  }

  private Optional<Pattern> limits(Place place, String text, Subject.Quantity subject) {
    if (!LIMITS.containsKey(text)) {
      problems.add(
          place,
          Words.quoted(text) + " says nothing about limits",
          NearMatch.help(text, LIMITS_WORDS));
      return Optional.empty();
    }
    if (!subject.limits()) {
      problems.add(
          place,
          Words.quoted(subject.id()) + " has no table of limits",
          "add the table below `limits:`, or give a number as in `above 65`");
    }
    return Optional.of(new AgainstLimits(LIMITS.get(text)));
  }

  private Optional<Pattern> compared(
      Place place, Comparison.Written written, Subject.Quantity subject) {
    return amount(place, written.threshold(), subject)
        .map(threshold -> written.comparison().of(threshold))
        .filter(interval -> isReachable(place, written, interval, subject))
        .map(InInterval::new);
  }

  private boolean isReachable(
      Place place, Comparison.Written written, Interval interval, Subject.Quantity subject) {
    Interval range = subject.domain().range();
    boolean reachable = interval.contains(low(range)) || interval.contains(high(range));
    if (!reachable) {
      String pattern = written.comparison().words() + " " + written.threshold();
      problems.add(
          place,
          "nothing in the range of " + Words.quoted(subject.id()) + " is " + Words.quoted(pattern),
          "its range is `" + show(range, subject.domain().unit()) + "`");
    }
    return reachable;
  }

  /** A stretch inside the reading's range. */
  Optional<Interval> stretch(Place place, String text, Subject.Quantity subject) {
    return quantities
        .stretch(place, text, subject.domain().unit(), Words.quoted(subject.id()))
        .filter(
            interval ->
                inRange(place, low(interval), subject) & inRange(place, high(interval), subject));
  }

  /** A value inside the reading's range. */
  Optional<BigFraction> amount(Place place, String text, Subject.Quantity subject) {
    return quantities
        .number(
            place,
            text,
            subject.domain().unit(),
            Words.quoted(subject.id()),
            subject.domain().range())
        .filter(number -> inRange(place, number, subject));
  }

  private boolean inRange(Place place, BigFraction number, Subject.Quantity subject) {
    Interval range = subject.domain().range();
    if (!range.contains(number)) {
      Unit unit = subject.domain().unit();
      problems.add(
          place,
          "`"
              + Decimals.show(number)
              + " "
              + unit
              + "` is outside the range of "
              + Words.quoted(subject.id()),
          PressureAdvice.ofBelowVacuum(number, unit)
              .orElse(
                  "its range is `"
                      + show(range, unit)
                      + "`; correct the value, or widen the range"));
      return false;
    }
    return true;
  }

  private static String show(Interval range, Unit unit) {
    return Decimals.show(low(range)) + " to " + Decimals.show(high(range)) + " " + unit;
  }

  private static BigFraction low(Interval range) {
    return range.low().orElseThrow().value();
  }

  private static BigFraction high(Interval range) {
    return range.high().orElseThrow().value();
  }
}
