package io.faultwright.sequence;

import java.util.BitSet;

/**
 * How far one has come. Only what still matters is kept, so that ways which come to the same meet.
 *
 * @param set the situations that are left
 * @param paid outlays that need not be paid again
 * @param late whether only late checks may follow
 */
record State(int set, BitSet paid, boolean late) {}
