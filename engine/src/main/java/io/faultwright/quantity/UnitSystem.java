package io.faultwright.quantity;

import java.util.Map;
import java.util.Optional;

/**
 * The two systems of units a technician may work in. Volts, amperes, hours and the like belong to
 * both.
 */
public enum UnitSystem {
  SI(
      Map.ofEntries(
          Map.entry("°F", "°C"),
          Map.entry("Δ°F", "K"),
          Map.entry("psi(g)", "bar(g)"),
          Map.entry("psi(a)", "bar(a)"),
          Map.entry("psi", "bar"),
          Map.entry("inHg(g)", "kPa(g)"),
          Map.entry("inHg(a)", "kPa(a)"),
          Map.entry("inHg", "kPa"),
          Map.entry("lb", "kg"),
          Map.entry("oz", "g"),
          Map.entry("in", "mm"),
          Map.entry("ft", "m"),
          Map.entry("gal/min", "L/min"),
          Map.entry("ft/min", "m/s"))),
  US(
      Map.ofEntries(
          Map.entry("°C", "°F"),
          Map.entry("K(a)", "°F"),
          Map.entry("K", "Δ°F"),
          Map.entry("bar(g)", "psi(g)"),
          Map.entry("bar(a)", "psi(a)"),
          Map.entry("bar", "psi"),
          Map.entry("kPa(g)", "psi(g)"),
          Map.entry("kPa(a)", "psi(a)"),
          Map.entry("kPa", "psi"),
          Map.entry("MPa(g)", "psi(g)"),
          Map.entry("MPa(a)", "psi(a)"),
          Map.entry("MPa", "psi"),
          Map.entry("kg", "lb"),
          Map.entry("g", "oz"),
          Map.entry("m", "ft"),
          Map.entry("cm", "in"),
          Map.entry("mm", "in"),
          Map.entry("L/min", "gal/min"),
          Map.entry("m/s", "ft/min")));

  /** From units of the other system alone to those of this one. */
  private final Map<String, String> counterparts;

  UnitSystem(Map<String, String> counterparts) {
    this.counterparts = counterparts;
  }

  /** What stands for a unit here; empty where the unit itself belongs here. */
  Optional<String> counterpart(String symbol) {
    return Optional.ofNullable(counterparts.get(symbol));
  }

  public UnitSystem other() {
    return this == SI ? US : SI;
  }
}
