package io.faultwright.finding;

/**
 * One side of a box of situations, in the trainer's words.
 *
 * @param reading id of the reading, or an equipment fact
 * @param accepts the values, for instance {@code above limits} or {@code 4 to 8 K}
 */
public record RegionTest(String reading, String accepts) {}
