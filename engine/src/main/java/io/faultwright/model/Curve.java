package io.faultwright.model;

import io.faultwright.quantity.Atmosphere;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Refrigerant;
import java.util.Optional;
import java.util.SortedMap;

/** A curve that a derived reading is read off. */
public sealed interface Curve {
  /** The curve for a machine with this refrigerant; absent where there is none. */
  Optional<Polyline> on(Optional<String> refrigerant);

  /** Pressure of the outside air, bar absolute, over the altitude in metres. */
  record OfAltitude() implements Curve {
    @Override
    public Optional<Polyline> on(Optional<String> refrigerant) {
      return Optional.of(Atmosphere.overAltitude());
    }
  }

  /**
   * Saturation temperature, °C, over the absolute pressure in bar.
   *
   * @param line bubble or dew
   * @param refrigerants those of the published models, by id
   */
  record OfSaturation(Line line, SortedMap<String, Refrigerant> refrigerants) implements Curve {
    public OfSaturation {
      refrigerants = Sorted.copy(refrigerants);
    }

    @Override
    public Optional<Polyline> on(Optional<String> refrigerant) {
      return refrigerant.map(refrigerants::get).map(known -> known.line(line));
    }
  }
}
