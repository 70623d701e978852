package io.faultwright.wording;

import io.faultwright.quantity.Unit;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How a reading counts.
 *
 * @param unit of its values
 * @param resolution smallest step shown, if that is said
 */
record Scale(Unit unit, Optional<BigFraction> resolution) {}
