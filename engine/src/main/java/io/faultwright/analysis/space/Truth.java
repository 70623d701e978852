package io.faultwright.analysis.space;

/**
 * A three-valued condition as two diagrams that share no situation.
 *
 * @param isTrue where it is surely true
 * @param isFalse where it is surely false
 */
public record Truth(int isTrue, int isFalse) {}
