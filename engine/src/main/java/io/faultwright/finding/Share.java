package io.faultwright.finding;

/**
 * A part of the distinguishable possible situations of a symptom.
 *
 * @param low proven lower bound, 0 to 1
 * @param high proven upper bound, 0 to 1
 * @param exact whether both bounds are the exact figure
 */
public record Share(double low, double high, boolean exact) {}
