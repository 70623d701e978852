package io.faultwright.grading;

/**
 * How often one option was chosen.
 *
 * @param option its id
 * @param right whether it is the right one
 * @param count how many chose it
 * @param upper share of those with the highest totals who did, from 0 to 1
 * @param lower share of those with the lowest totals who did, from 0 to 1
 */
public record Choice(String option, boolean right, int count, double upper, double lower) {}
