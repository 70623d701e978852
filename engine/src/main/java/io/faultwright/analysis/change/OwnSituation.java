package io.faultwright.analysis.change;

import io.faultwright.model.Build;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Unit;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A shared situation in the words of one side: the readings it asks, in its units. */
final class OwnSituation {
  private OwnSituation() {}

  static Situation of(Joined joined, SymptomScope scope, Situation shared) {
    Side side = scope.side();
    Build build = build(joined, shared);
    Build own = side.own(build);
    SortedMap<String, String> equipment = new TreeMap<>();
    equipment.put(Equipment.MODEL, own.model().id());
    own.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    SortedMap<String, Value> readings = new TreeMap<>();
    for (String reading : scope.asked()) {
      value(joined, side, reading, shared)
          .filter(value -> side.having(reading).contains(build))
          .ifPresent(value -> readings.put(reading, value));
    }
    return new Situation(equipment, readings);
  }

  private static Build build(Joined joined, Situation shared) {
    return joined.builds().stream()
        .filter(build -> is(build, Equipment.MODEL, shared))
        .filter(build -> is(build, Equipment.SOFTWARE, shared))
        .findFirst()
        .orElseThrow();
  }

  private static boolean is(Build build, String attribute, Situation situation) {
    return build
        .attribute(attribute)
        .equals(Optional.ofNullable(situation.equipment().get(attribute)));
  }

  private static Optional<Value> value(Joined joined, Side side, String reading, Situation shared) {
    String name = side.name(reading);
    Reading definition = joined.knowledge().readings().get(name);
    return Optional.ofNullable(shared.readings().get(name))
        .map(
            value ->
                value instanceof Value.Number number
                    ? new Value.Number(
                        unit(definition).convert(number.amount(), side.unit(reading)))
                    : value);
  }

  private static Unit unit(Reading reading) {
    return ((Domain.Measured) reading.domain()).unit();
  }
}
