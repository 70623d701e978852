package io.faultwright.quantity;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;

/** The units a knowledge base may use; what they are is in {@code Definitions}. */
public final class Units {
  private static final Map<String, Unit> BY_SYMBOL = Definitions.all();

  private Units() {}

  public static Optional<Unit> find(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /** Every symbol that {@link #find} knows, in a fixed order. */
  public static Collection<String> symbols() {
    return Collections.unmodifiableSet(BY_SYMBOL.keySet());
  }

  /**
   * The unit of the same size for differences: K for °C and K(a), bar for bar(g), mostly the unit
   * itself.
   */
  public static Unit ofDifferences(Unit unit) {
    return switch (unit.dimension()) {
      case TEMPERATURE -> BY_SYMBOL.get(unit.symbol().equals("°F") ? "Δ°F" : "K");
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE ->
          BY_SYMBOL.get(unit.symbol().replaceFirst("\\([ga]\\)$", ""));
      default -> unit;
    };
  }

  /** The unit that the trade uses for the same quantity in a system of units. */
  public static Unit in(Unit unit, UnitSystem system) {
    return system.counterpart(unit.symbol()).map(BY_SYMBOL::get).orElse(unit);
  }

  /** The unit for the same quantity in the system that this one does not belong to, if there is. */
  public static Optional<Unit> counterpart(Unit unit) {
    return Arrays.stream(UnitSystem.values())
        .map(system -> in(unit, system))
        .filter(other -> !other.equals(unit))
        .findFirst();
  }
}
