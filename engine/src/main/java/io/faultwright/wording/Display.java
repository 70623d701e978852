package io.faultwright.wording;

import io.faultwright.model.ShownUnits;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.UnitSystem;
import io.faultwright.quantity.Units;
import io.faultwright.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * In which units amounts are said.
 *
 * @param units a system, or both; absent for the units in which things are written
 * @param say words and decimal sign of the language
 */
record Display(Optional<ShownUnits> units, Words say) {
  private static final Pattern LAST_BLANK = Pattern.compile(" (?=\\S+$)");

  static final Display AS_WRITTEN = new Display(Optional.empty(), Words.ENGLISH);

  /** An amount in each unit in which it is said, the first one first. */
  List<Figure> figures(BigFraction value, Scale scale) {
    return local(
        system()
            .map(system -> List.of(in(system, value, scale)))
            .orElseGet(() -> beside(Figure.exact(value, scale.unit()), value, scale)));
  }

  /** As above, in columns that have one unit each. */
  List<Figure> column(BigFraction value, Scale scale) {
    return local(
        system()
            .map(system -> List.of(in(system, value, scale)))
            .orElseGet(() -> beside(Figure.own(value, scale.unit()), value, scale)));
  }

  private List<Figure> local(List<Figure> figures) {
    return figures.stream().map(one -> new Figure(say.figure(one.number()), one.unit())).toList();
  }

  /** The steps in which an instrument reads. */
  List<Figure> steps(BigFraction resolution, Unit unit) {
    return local(units(unit).stream().map(to -> Figure.step(resolution, unit, to)).toList());
  }

  /** The units in which amounts in this unit are said. */
  List<Unit> units(Unit unit) {
    return system()
        .map(system -> List.of(Units.in(unit, system)))
        .orElseGet(() -> Stream.concat(Stream.of(unit), other(unit).stream()).toList());
  }

  private Optional<UnitSystem> system() {
    return units
        .filter(shown -> shown != ShownUnits.BOTH)
        .map(shown -> shown == ShownUnits.SI ? UnitSystem.SI : UnitSystem.US);
  }

  private static Figure in(UnitSystem system, BigFraction value, Scale scale) {
    return Figure.converted(value, scale, Units.in(scale.unit(), system));
  }

  private List<Figure> beside(Figure first, BigFraction value, Scale scale) {
    return Stream.concat(
            Stream.of(first),
            other(first.unit()).stream().map(to -> Figure.converted(value, scale, to)))
        .toList();
  }

  private Optional<Unit> other(Unit unit) {
    return units.isPresent() ? Units.counterpart(unit) : Optional.empty();
  }

  /** {@code 65 °C}, or {@code 65 °C (149 °F)}, with a blank in the brackets that no line breaks. */
  static <T> String join(List<T> forms, Function<T, String> words) {
    String others =
        forms.stream().skip(1).map(words).map(Display::glued).collect(Collectors.joining(", "));
    return words.apply(forms.get(0)) + (others.isEmpty() ? "" : " (" + others + ")");
  }

  /** The unit stays with its number. */
  private static String glued(String amount) {
    return LAST_BLANK.matcher(amount).replaceFirst("\u00A0");
  }
}
