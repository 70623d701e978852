package io.faultwright.analysis.space;

/**
 * A condition as diagrams. Where it is neither true nor false it is unknown: a reading cannot be
 * taken, or a figure is missing. A test on a reading that the equipment does not have can never
 * come true, and neither can its negation.
 *
 * @param isTrue where it is surely true
 * @param isFalse where it is surely false
 * @param mayBeTrue where it is true or may be
 * @param mayBeFalse where it is false or may be
 */
public record Truth(int isTrue, int isFalse, int mayBeTrue, int mayBeFalse) {
  Truth negated() {
    return new Truth(isFalse, isTrue, mayBeFalse, mayBeTrue);
  }
}
