package io.faultwright.demo;

import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.quantity.Atmosphere;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A machine with readings on chosen sides of their limits, written as the technician writes them.
 *
 * @param measured the amounts in the units of their readings
 * @param chosen the words of the other readings
 */
record Machine(
    KnowledgeBase kb, Build build, Map<String, BigFraction> measured, Map<String, String> chosen) {
  private static final int PLACES = 7;
  private static final Map<String, String> IN_US_UNITS = Map.of("°C", "°F", "bar(g)", "psi(g)");

  static Machine of(KnowledgeBase kb, Build build) {
    return new Machine(kb, build, Map.of(), Map.of());
  }

  /** With a reading that has named values. */
  Machine chosen(String reading, String value) {
    Map<String, String> all = new LinkedHashMap<>(chosen);
    all.put(reading, value);
    return new Machine(kb, build, measured, all);
  }

  Machine measured(String reading, BigFraction amount) {
    Map<String, BigFraction> all = new LinkedHashMap<>(measured);
    all.put(reading, amount);
    return new Machine(kb, build, all, chosen);
  }

  Machine measured(String reading, String amount) {
    return measured(reading, Decimals.parse(amount));
  }

  /** With a reading halfway between its limits, or one step of its resolution outside. */
  Machine on(Side side, String reading) {
    return measured(reading, amount(side, reading));
  }

  /** With the line temperature that gives a superheat of that side, at sea level. */
  Machine superheat(Side side) {
    BigFraction boiling = saturated(Line.DEW, "suction-pressure");
    return measured("suction-line-temperature", boiling.add(amount(side, "superheat")));
  }

  /** With the liquid line temperature that gives a subcooling of that side, at sea level. */
  Machine subcooling(Side side) {
    BigFraction boiling = saturated(Line.BUBBLE, "liquid-pressure");
    return measured("liquid-line-temperature", boiling.subtract(amount(side, "subcooling")));
  }

  /** With a standstill pressure whose boiling point is so many kelvin above the air. */
  Machine standstill(String airCelsius, String kelvinAbove) {
    BigFraction celsius = Decimals.parse(airCelsius).add(Decimals.parse(kelvinAbove));
    BigFraction absolute =
        kb.equipment()
            .refrigerants()
            .get(refrigerant())
            .pressure(Line.BUBBLE, celsius)
            .orElseThrow();
    return measured("standstill-air-temperature", airCelsius)
        .measured("standstill-pressure", absolute.subtract(Atmosphere.atSeaLevel()));
  }

  private String refrigerant() {
    return build.model().refrigerant().orElseThrow();
  }

  private BigFraction saturated(Line line, String pressure) {
    return kb.equipment()
        .refrigerants()
        .get(refrigerant())
        .temperature(line, measured.get(pressure).add(Atmosphere.atSeaLevel()))
        .orElseThrow();
  }

  private BigFraction amount(Side side, String reading) {
    LimitsTable table = kb.limits().get(reading);
    List<BigFraction> drivers = table.drivers().stream().map(measured::get).toList();
    var band = Limits.of(table, build).at(drivers).orElseThrow();
    BigFraction low = band.low().orElseThrow();
    BigFraction high = band.high().orElseThrow();
    BigFraction step = domain(reading).resolution().orElseThrow();
    return switch (side) {
      case BELOW -> low.subtract(step);
      case WITHIN -> low.add(high).divide(2);
      case ABOVE -> high.add(step);
    };
  }

  private Domain.Measured domain(String reading) {
    return (Domain.Measured) kb.readings().get(reading).domain();
  }

  /** The readings as the {@code given} of a case. */
  String given(boolean inUsUnits) {
    Stream<String> facts = Stream.of(Equipment.MODEL + ": " + build.model().id());
    Stream<String> software =
        build.software().stream().map(version -> Equipment.SOFTWARE + ": " + version.text());
    Stream<String> words = chosen.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue());
    Stream<String> amounts =
        measured.entrySet().stream().map(e -> written(e.getKey(), e.getValue(), inUsUnits));
    return Stream.of(facts, software, words, amounts)
        .flatMap(all -> all)
        .collect(Collectors.joining(", ", "{ ", " }"));
  }

  private String written(String reading, BigFraction amount, boolean inUsUnits) {
    Unit own = domain(reading).unit();
    String symbol = inUsUnits ? IN_US_UNITS.getOrDefault(own.symbol(), own.symbol()) : own.symbol();
    BigFraction shown = own.convert(amount, Units.find(symbol).orElseThrow());
    String digits = shown.bigDecimalValue(PLACES, RoundingMode.HALF_EVEN).toPlainString();
    return reading + ": " + digits + " " + symbol;
  }
}
