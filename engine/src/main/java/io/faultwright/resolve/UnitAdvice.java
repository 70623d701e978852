package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.quantity.Dimension;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Advice on units that are unknown or measure something else. */
final class UnitAdvice {
  private static final int TELLING_LENGTH = 3;
  private static final Set<Dimension> PRESSURES =
      EnumSet.of(
          Dimension.GAUGE_PRESSURE, Dimension.ABSOLUTE_PRESSURE, Dimension.PRESSURE_DIFFERENCE);
  private static final Set<Dimension> TEMPERATURES =
      EnumSet.of(Dimension.TEMPERATURE, Dimension.TEMPERATURE_DIFFERENCE);

  /** Usual ways to write a unit, in lower case without blanks, to the one that is read. */
  private static final Map<String, String> MEANT =
      Map.ofEntries(
          Map.entry("c", "°C"),
          Map.entry("ºc", "°C"),
          Map.entry("℃", "°C"),
          Map.entry("degc", "°C"),
          Map.entry("celsius", "°C"),
          Map.entry("f", "°F"),
          Map.entry("ºf", "°F"),
          Map.entry("℉", "°F"),
          Map.entry("degf", "°F"),
          Map.entry("kelvin", "K"),
          Map.entry("barg", "bar(g)"),
          Map.entry("bara", "bar(a)"),
          Map.entry("bars", "bar(g)"),
          Map.entry("psig", "psi(g)"),
          Map.entry("psia", "psi(a)"),
          Map.entry("kpag", "kPa(g)"),
          Map.entry("kpaa", "kPa(a)"),
          Map.entry("ohm", "Ω"),
          Map.entry("ohms", "Ω"),
          Map.entry("\u2126", "Ω"),
          Map.entry("k\u2126", "kΩ"),
          Map.entry("kohm", "kΩ"),
          Map.entry("volt", "V"),
          Map.entry("volts", "V"),
          Map.entry("vac", "V"),
          Map.entry("vdc", "V"),
          Map.entry("amp", "A"),
          Map.entry("amps", "A"),
          Map.entry("sec", "s"),
          Map.entry("seconds", "s"),
          Map.entry("mins", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hours", "h"),
          Map.entry("percent", "%"),
          Map.entry("feet", "ft"),
          Map.entry("fpm", "ft/min"),
          Map.entry("gpm", "gal/min"),
          Map.entry("lpm", "L/min"));

  private UnitAdvice() {}

  static String helpForUnknown(String symbol) {
    return meant(symbol)
        .map(unit -> "did you mean `" + unit + "`?")
        .orElse("units here: " + Words.quoted(Units.symbols()));
  }

  private static Optional<String> meant(String symbol) {
    String plain = symbol.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    Optional<String> sameLetters =
        Units.symbols().stream()
            .filter(unit -> unit.toLowerCase(Locale.ROOT).equals(plain))
            .findFirst();
    return Optional.ofNullable(MEANT.get(plain)).or(() -> sameLetters).or(() -> near(symbol));
  }

  private static Optional<String> near(String symbol) {
    return symbol.length() < TELLING_LENGTH
        ? Optional.empty()
        : NearMatch.of(symbol, Units.symbols());
  }

  static String mismatch(Unit found, Unit wanted, String whose) {
    return String.format(
        "`%s` is %s, but %s is in `%s`, %s",
        found.symbol(), noun(found.dimension()), whose, wanted.symbol(), noun(wanted.dimension()));
  }

  static String helpForMismatch(Unit found, Unit wanted) {
    if (PRESSURES.contains(found.dimension()) && PRESSURES.contains(wanted.dimension())) {
      return "gauge pressure `(g)` counts from the air around, absolute pressure `(a)` from vacuum,"
          + " about 1 bar more; `bar` alone is the difference of two pressures: write the value in `"
          + wanted.symbol()
          + "`";
    }
    if (TEMPERATURES.contains(found.dimension()) && TEMPERATURES.contains(wanted.dimension())) {
      return "`°C` and `°F` say how warm something is, `K` and `Δ°F` how far two temperatures are"
          + " apart: write the value in `"
          + wanted.symbol()
          + "`";
    }
    return "write the value in `" + wanted.symbol() + "`";
  }

  private static String noun(Dimension dimension) {
    String name = dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
  }
}
