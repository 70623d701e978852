package io.faultwright.model;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class DerivedTest {
  private static final KnowledgeBase BASE =
      new KnowledgeBaseBuilder()
          .model("FL-1", "fell", Map.of())
          .measured("room", "°C", "-40", "30")
          .measured("coil", "°F", "-49", "86")
          .applies("coil", is("family", "fell"))
          .difference("gap", "room", "coil")
          .derived("twin", Units.find("K").orElseThrow(), Derived.same("gap"))
          .build();

  private static Optional<Value> value(String reading, SituationBuilder given) {
    return Optional.ofNullable(new DerivedValues(BASE).of(given.build()).get(reading));
  }

  private static Optional<Value> number(String decimal) {
    return Optional.of(new Value.Number(Decimals.parse(decimal)));
  }

  /** 14 °F are -10 °C and 32 °F are 0 °C, by the definition of the Fahrenheit scale. */
  @Test
  void unitsOfOneDimensionConvertExactly() {
    assertEquals(number("15"), value("gap", situation().amount("room", "5").amount("coil", "14")));
    assertEquals(number("5"), value("gap", situation().amount("room", "5").amount("coil", "32")));
  }

  /** -49 °F are -45 °C and 86 °F are 30 °C. */
  @Test
  void rangeIsTheExactImageOfTheOperandsRanges() {
    Domain.Measured domain = (Domain.Measured) BASE.readings().get("gap").domain();
    assertEquals(Interval.closed(Decimals.parse("-70"), Decimals.parse("75")), domain.range());
    assertEquals("K", domain.unit().symbol());
  }

  @Test
  void existsWhereItsOperandsExist() {
    Condition applies = BASE.readings().get("gap").applies();
    assertEquals(1, applies.tests().count());
    assertEquals(applies.tests().toList(), is("family", "fell").tests().toList());
  }

  @Test
  void unknownUntilEveryOperandIsKnown() {
    assertEquals(Optional.empty(), value("gap", situation().amount("room", "5")));
    assertEquals(Optional.empty(), value("twin", situation().amount("room", "5")));
  }

  @Test
  void notTakenWhereAnOperandIsNot() {
    Optional<Value> notTaken = Optional.of(new Value.NotTaken());
    assertEquals(notTaken, value("gap", situation().notTaken("coil")));
    assertEquals(notTaken, value("gap", situation().notTaken("coil").amount("room", "5")));
    assertEquals(notTaken, value("twin", situation().notTaken("coil")));
  }

  @Test
  void mayBeComputedFromWhatIsComputed() {
    assertEquals(number("15"), value("twin", situation().amount("room", "5").amount("coil", "14")));
  }

  @Test
  void whatIsGivenForItDoesNotCount() {
    Situation given = situation().amount("gap", "3").amount("room", "5").build();
    assertEquals(situation().amount("room", "5").build(), new DerivedValues(BASE).complete(given));
  }

  @Test
  void operandsMatter() {
    TreeMap<String, BigFraction> none = new TreeMap<>();
    assertThrows(IllegalArgumentException.class, () -> Derived.linear(none, BigFraction.ONE));
    TreeMap<String, BigFraction> zero = new TreeMap<>(Map.of("room", BigFraction.ZERO));
    assertThrows(IllegalArgumentException.class, () -> Derived.linear(zero, BigFraction.ONE));
  }
}
