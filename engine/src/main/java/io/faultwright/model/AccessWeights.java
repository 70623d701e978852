package io.faultwright.model;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How many minutes outside a minute of each kind of access counts for, where effort has to be one
 * number.
 *
 * @param outside nothing is opened
 * @param panel at an open panel
 * @param liveVoltage at live voltage
 * @param refrigerantCircuit at the refrigerant circuit
 */
public record AccessWeights(
    BigFraction outside,
    BigFraction panel,
    BigFraction liveVoltage,
    BigFraction refrigerantCircuit) {
  /** Those of a handbook that does not say. A choice of ours, without a source. */
  public static final AccessWeights USUAL =
      new AccessWeights(BigFraction.ONE, BigFraction.of(2), BigFraction.of(3), BigFraction.of(4));

  /** The weight of one kind; greater than zero. */
  public BigFraction of(Access access) {
    return switch (access) {
      case OUTSIDE -> outside;
      case PANEL -> panel;
      case LIVE_VOLTAGE -> liveVoltage;
      case REFRIGERANT_CIRCUIT -> refrigerantCircuit;
    };
  }
}
