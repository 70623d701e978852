package io.faultwright.measure;

import io.faultwright.model.Answer;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The handbook {@code pace} as an engineer would write it in Java for whole records: nested
 * questions over the parsed values, exact comparisons. What is outside its range is asked back.
 */
final class HandWritten {
  private static final BigFraction FOUR = number("4");
  private static final BigFraction FIVE = number("5");
  private static final BigFraction EIGHT = number("8");
  private static final BigFraction TWELVE = number("12");
  private static final BigFraction FIFTEEN = number("15");
  private static final BigFraction COLD = number("-10");

  private static final Map<String, Boolean> IS_FELL =
      Map.of("FL-1", true, "FL-2", true, "TN-1", false);
  private static final Map<String, Boolean> IS_NEW =
      Map.of("2.9", false, "2.10", true, "3.0", true);

  private static final Answer ESCALATE = new Answer.OfEscalation("hotline");
  private static final Answer FAN_MOTOR = new Answer.OfFault("fan-motor");
  private static final Answer FAN_RELAY = new Answer.OfFault("fan-relay");
  private static final Answer FAN_CABLE = new Answer.OfFault("fan-cable");
  private static final Answer DEFROST_TIMER = new Answer.OfFault("defrost-timer");
  private static final Answer DEFROST_SOFTWARE = new Answer.OfFault("defrost-software");
  private static final Answer DEFROST_HEATER = new Answer.OfFault("defrost-heater");
  private static final Answer GASKET_TORN = new Answer.OfFault("gasket-torn");
  private static final Answer OVERCHARGED = new Answer.OfFault("overcharged");
  private static final Answer CONDENSER_DIRTY = new Answer.OfFault("condenser-dirty");
  private static final Answer CONDENSER_FAN = new Answer.OfFault("condenser-fan-broken");
  private static final Answer AIR_IN_CIRCUIT = new Answer.OfFault("air-in-circuit");
  private static final Answer LINE_UNINSULATED = new Answer.OfFault("line-uninsulated");
  private static final Answer LOAD_HIGH = new Answer.OfFault("load-high");
  private static final Answer LOAD_LOW = new Answer.OfFault("load-low");
  private static final Answer VALVE_FLOODS = new Answer.OfFault("valve-floods");
  private static final Answer VALVE_STARVES = new Answer.OfFault("valve-starves");
  private static final Answer SETPOINT_WRONG = new Answer.OfFault("setpoint-wrong");
  private static final Answer SENSOR_DRIFTED = new Answer.OfFault("sensor-drifted");
  private static final Answer CONTROLLER_FAILED = new Answer.OfFault("controller-failed");
  private static final Answer DRIER_BLOCKED = new Answer.OfFault("drier-blocked");
  private static final Answer CHARGE_LOW = new Answer.OfFault("charge-low");
  private static final Answer AIRFLOW_LOW = new Answer.OfFault("airflow-low");
  private static final Answer COMPRESSOR_VALVES = new Answer.OfFault("compressor-valves");
  private static final Answer COMPRESSOR_WORN = new Answer.OfFault("compressor-worn");
  private static final Answer HEAD_PRESSURE = new Answer.OfFault("head-pressure-control");
  private static final Answer FAN_SPEED = new Answer.OfFault("fan-speed-control");
  private static final Answer RECEIVER_BYPASS = new Answer.OfFault("receiver-bypass");

  private static final Line FELL_DISCHARGE =
      new Line("0 7.1 9.0", "15 9.3 11.6", "27 11.9 14.4", "40 15.2 18.7");
  private static final Line TARN_DISCHARGE = new Line("0 8.0 10.1", "20 11.3 13.9", "40 16.6 20.2");
  private static final Line FELL_SUCTION = new Line("-40 0.2 0.7", "-18 1.1 1.7", "30 3.9 6.2");
  private static final Line TARN_SUCTION = new Line("-40 0.3 0.9", "30 4.3 6.8");

  private static final Span ROOM = new Span("-40", "30");
  private static final Span AMBIENT = new Span("0", "40");
  private static final Span HOURS = new Span("0", "48");
  private static final Span DISCHARGE = new Span("0", "35");
  private static final Span SUCTION = new Span("-0.9", "12");
  private static final Span SUPERHEAT = new Span("0", "40");
  private static final Span SUBCOOLING = new Span("0", "25");
  private static final Span CURRENT = new Span("0", "60");

  private HandWritten() {}

  /** Both ends of a range. */
  private record Span(BigFraction low, BigFraction high) {
    Span(String low, String high) {
      this(number(low), number(high));
    }

    boolean misses(BigFraction value) {
      return value.compareTo(low) < 0 || value.compareTo(high) > 0;
    }
  }

  /** Limits over a driver: at ascending points a low and a high end, straight between. */
  private static final class Line {
    private final BigFraction[] at;
    private final BigFraction[] low;
    private final BigFraction[] high;

    Line(String... points) {
      at = new BigFraction[points.length];
      low = new BigFraction[points.length];
      high = new BigFraction[points.length];
      for (int i = 0; i < points.length; i++) {
        String[] parts = points[i].split(" ");
        at[i] = number(parts[0]);
        low[i] = number(parts[1]);
        high[i] = number(parts[2]);
      }
    }

    /** Below -1, within 0, above 1. */
    int side(BigFraction driver, BigFraction value) {
      int i = 0;
      while (driver.compareTo(at[i + 1]) > 0) {
        i++;
      }
      BigFraction share = driver.subtract(at[i]).divide(at[i + 1].subtract(at[i]));
      if (value.compareTo(low[i].add(low[i + 1].subtract(low[i]).multiply(share))) < 0) {
        return -1;
      }
      return value.compareTo(high[i].add(high[i + 1].subtract(high[i]).multiply(share))) > 0
          ? 1
          : 0;
    }
  }

  private static BigFraction number(String text) {
    return Decimals.parse(text);
  }

  private static boolean is(Map<String, Value> readings, String reading, String word) {
    return ((Value.Word) readings.get(reading)).id().equals(word);
  }

  private static BigFraction amount(Map<String, Value> readings, String reading) {
    return ((Value.Number) readings.get(reading)).amount();
  }

  /** The answer; empty where a value is out of its range. */
  static Optional<Answer> judge(Situation situation) {
    Map<String, Value> readings = situation.readings();
    BigFraction room = amount(readings, "room-temperature");
    BigFraction ambient = amount(readings, "ambient-temperature");
    BigFraction hours = amount(readings, "defrost-hours");
    BigFraction discharge = amount(readings, "discharge-pressure");
    BigFraction suction = amount(readings, "suction-pressure");
    BigFraction superheat = amount(readings, "superheat");
    BigFraction subcooling = amount(readings, "subcooling");
    BigFraction current = amount(readings, "compressor-current");
    if (ROOM.misses(room)
        || AMBIENT.misses(ambient)
        || HOURS.misses(hours)
        || DISCHARGE.misses(discharge)
        || SUCTION.misses(suction)
        || SUPERHEAT.misses(superheat)
        || SUBCOOLING.misses(subcooling)
        || CURRENT.misses(current)) {
      return Optional.empty();
    }
    boolean fell = IS_FELL.get(situation.equipment().get("model"));
    if (is(readings, "fan-running", "no")) {
      return Optional.of(fan(readings, fell));
    }
    if (is(readings, "coil-face", "iced")) {
      return Optional.of(ice(readings, situation.equipment().get("software"), hours));
    }
    int side = (fell ? FELL_DISCHARGE : TARN_DISCHARGE).side(ambient, discharge);
    if (side > 0) {
      return Optional.of(high(readings, subcooling));
    }
    int sideOfSuction = (fell ? FELL_SUCTION : TARN_SUCTION).side(room, suction);
    return Optional.of(
        side == 0
            ? right(readings, sideOfSuction, room, superheat, subcooling)
            : low(sideOfSuction, fell, ambient, superheat, subcooling, current));
  }

  private static Answer fan(Map<String, Value> readings, boolean fell) {
    if (is(readings, "display", "e1")) {
      return FAN_MOTOR;
    }
    return fell ? FAN_RELAY : FAN_CABLE;
  }

  private static Answer ice(Map<String, Value> readings, String software, BigFraction hours) {
    if (hours.compareTo(TWELVE) > 0) {
      return IS_NEW.get(software) ? DEFROST_TIMER : DEFROST_SOFTWARE;
    }
    return is(readings, "door", "leaking") ? GASKET_TORN : DEFROST_HEATER;
  }

  private static Answer high(Map<String, Value> readings, BigFraction subcooling) {
    if (subcooling.compareTo(FOUR) < 0) {
      return AIR_IN_CIRCUIT;
    }
    if (is(readings, "condenser-face", "clogged")) {
      return CONDENSER_DIRTY;
    }
    if (subcooling.compareTo(EIGHT) > 0) {
      return OVERCHARGED;
    }
    return is(readings, "condenser-fan", "no") ? CONDENSER_FAN : AIR_IN_CIRCUIT;
  }

  private static Answer right(
      Map<String, Value> readings,
      int suction,
      BigFraction room,
      BigFraction superheat,
      BigFraction subcooling) {
    boolean hot = superheat.compareTo(EIGHT) > 0;
    if (suction > 0) {
      return hot ? LINE_UNINSULATED : superheat.compareTo(FOUR) < 0 ? VALVE_FLOODS : LOAD_HIGH;
    }
    boolean clear = is(readings, "coil-face", "clear");
    if (suction == 0) {
      return clear ? cooling(readings, room) : frosted(readings, hot);
    }
    if (!hot) {
      return clear ? LOAD_LOW : AIRFLOW_LOW;
    }
    if (subcooling.compareTo(EIGHT) > 0) {
      return VALVE_STARVES;
    }
    return subcooling.compareTo(FOUR) < 0 ? CHARGE_LOW : DRIER_BLOCKED;
  }

  private static Answer cooling(Map<String, Value> readings, BigFraction room) {
    if (room.compareTo(COLD) <= 0) {
      return ESCALATE;
    }
    if (is(readings, "display", "none")) {
      return SETPOINT_WRONG;
    }
    return is(readings, "display", "e2") ? SENSOR_DRIFTED : CONTROLLER_FAILED;
  }

  private static Answer frosted(Map<String, Value> readings, boolean hot) {
    if (is(readings, "door", "leaking")) {
      return GASKET_TORN;
    }
    return hot ? DRIER_BLOCKED : DEFROST_HEATER;
  }

  private static Answer low(
      int suction,
      boolean fell,
      BigFraction ambient,
      BigFraction superheat,
      BigFraction subcooling,
      BigFraction current) {
    if (suction > 0) {
      if (current.compareTo(FIVE) < 0) {
        return COMPRESSOR_VALVES;
      }
      return superheat.compareTo(FOUR) < 0 ? VALVE_FLOODS : COMPRESSOR_WORN;
    }
    if (suction == 0) {
      if (ambient.compareTo(FIFTEEN) < 0) {
        return HEAD_PRESSURE;
      }
      return fell ? FAN_SPEED : RECEIVER_BYPASS;
    }
    if (subcooling.compareTo(FOUR) < 0) {
      return CHARGE_LOW;
    }
    return superheat.compareTo(EIGHT) > 0 ? VALVE_STARVES : ESCALATE;
  }
}
