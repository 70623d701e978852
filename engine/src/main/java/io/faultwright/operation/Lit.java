package io.faultwright.operation;

import io.faultwright.model.Sequence.Energised;

/**
 * When an output is on in a phase, in steps since the phase began.
 *
 * @param source as written
 * @param output number of the output
 * @param from first step at which it is on
 * @param until step at which it is off again; {@link Program#NEVER}: to the end
 */
public record Lit(Energised source, int output, long from, long until) {}
