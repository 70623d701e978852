package io.faultwright.quantity;

/** What a unit measures; only units of one dimension convert into each other. */
public enum Dimension {
  TEMPERATURE,
  TEMPERATURE_DIFFERENCE,
  GAUGE_PRESSURE,
  ABSOLUTE_PRESSURE,
  PRESSURE_DIFFERENCE,
  VOLTAGE,
  CURRENT,
  RESISTANCE,
  FREQUENCY,
  POWER,
  TIME,
  MASS,
  LENGTH,
  FLOW,
  SPEED,
  RATIO,
  COUNT
}
