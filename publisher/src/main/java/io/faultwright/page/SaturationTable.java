package io.faultwright.page;

import io.faultwright.page.RefrigerantSection.Table;
import io.faultwright.quantity.Atmosphere;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.Rounding;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.UnitSystem;
import io.faultwright.quantity.Units;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Pressures of a refrigerant over round temperatures, in one system of units. */
final class SaturationTable {
  private static final Unit CELSIUS = unit("°C");
  private static final Unit KELVIN = unit("K");
  private static final Unit GAUGE = unit("bar(g)");
  private static final Unit ABSOLUTE = unit("bar(a)");
  private static final Unit METRE = unit("m");

  /** The useful range, °C. */
  private static final Interval USEFUL = Interval.closed(BigFraction.of(-50), BigFraction.of(60));

  private final Refrigerant refrigerant;
  private final UnitSystem system;
  private final Words say;

  SaturationTable(Refrigerant refrigerant, UnitSystem system, Words say) {
    this.say = say;
    this.refrigerant = refrigerant;
    this.system = system;
  }

  private static Unit unit(String symbol) {
    return Units.find(symbol).orElseThrow();
  }

  /** Whether it boils over a range of temperatures. */
  static boolean glides(Refrigerant refrigerant) {
    return !refrigerant.bubble().equals(refrigerant.dew());
  }

  /** The temperatures at which both lines are known, °C. */
  static Interval known(Refrigerant refrigerant) {
    Interval bubble = refrigerant.bubble().image();
    Interval dew = refrigerant.dew().image();
    return Interval.closed(
        Stream.of(low(bubble), low(dew)).max(BigFraction::compareTo).orElseThrow(),
        Stream.of(high(bubble), high(dew)).min(BigFraction::compareTo).orElseThrow());
  }

  Table table() {
    return new Table(
        symbol(CELSIUS),
        symbol(GAUGE),
        symbol(ABSOLUTE),
        symbol(KELVIN),
        temperatures().map(this::row).toList(),
        altitude());
  }

  /** Whole degrees within a stretch, for instance {@code -60 to 67 °C}. */
  String stretch(Interval celsius) {
    Unit shown = Units.in(CELSIUS, system);
    return say.say(
        "{0} to {1}",
        CELSIUS.convert(low(celsius), shown).intValue(),
        CELSIUS.convert(high(celsius), shown).intValue() + " " + shown);
  }

  /** Steps of 2 °C or of 5 °F, as °C. */
  private Stream<BigFraction> temperatures() {
    int step = system == UnitSystem.SI ? 2 : 5;
    Unit shown = Units.in(CELSIUS, system);
    int from = CELSIUS.convert(low(USEFUL), shown).intValue() / step * step;
    int to = CELSIUS.convert(high(USEFUL), shown).intValue();
    Interval known = known(refrigerant);
    return IntStream.rangeClosed(0, (to - from) / step)
        .mapToObj(i -> shown.convert(BigFraction.of(from + i * step), CELSIUS))
        .filter(known::contains);
  }

  private List<String> row(BigFraction celsius) {
    List<String> cells = new ArrayList<>();
    cells.add(temperature(celsius));
    cells.addAll(pressures(Line.BUBBLE, celsius));
    if (glides(refrigerant)) {
      cells.addAll(pressures(Line.DEW, celsius));
      cells.add(glide(celsius).map(glide -> shown(glide, KELVIN)).orElse(""));
    }
    return cells;
  }

  private List<String> pressures(Line line, BigFraction celsius) {
    BigFraction bar = refrigerant.pressure(line, celsius).orElseThrow();
    return List.of(shown(bar.subtract(Atmosphere.atSeaLevel()), GAUGE), shown(bar, ABSOLUTE));
  }

  /** How far the dew point lies above the bubble point at the bubble pressure. */
  private Optional<BigFraction> glide(BigFraction celsius) {
    return refrigerant
        .pressure(Line.BUBBLE, celsius)
        .flatMap(bar -> refrigerant.temperature(Line.DEW, bar))
        .map(dew -> dew.subtract(celsius));
  }

  /** What a gauge shows more where the air is thinner. */
  private String altitude() {
    Unit length = Units.in(METRE, system);
    return (system == UnitSystem.SI
            ? IntStream.of(1000, 2000, 3000)
            : IntStream.of(3000, 6000, 9000))
        .mapToObj(
            height ->
                height
                    + " "
                    + length
                    + ": "
                    + shown(thinner(height, length), unit("bar"))
                    + " "
                    + symbol(unit("bar")))
        .collect(Collectors.joining(", "));
  }

  private static BigFraction thinner(int height, Unit length) {
    BigFraction metres = length.convert(BigFraction.of(height), METRE);
    return Atmosphere.atSeaLevel().subtract(Atmosphere.overAltitude().at(metres).orElseThrow());
  }

  private String temperature(BigFraction celsius) {
    return say.figure(Decimals.show(CELSIUS.convert(celsius, Units.in(CELSIUS, system))));
  }

  /** To a hundredth of a bar, a tenth of a psi or of a kelvin. */
  private String shown(BigFraction value, Unit unit) {
    Unit to = Units.in(unit, system);
    String shown = Rounding.column(unit.convert(value, to), to.symbol().startsWith("bar") ? 2 : 1);
    return say.figure(shown);
  }

  private String symbol(Unit unit) {
    return Units.in(unit, system).symbol();
  }

  private static BigFraction low(Interval interval) {
    return interval.low().map(End::value).orElseThrow();
  }

  private static BigFraction high(Interval interval) {
    return interval.high().map(End::value).orElseThrow();
  }
}
