package io.faultwright.analysis.contradiction;

/**
 * Two conclusions that cannot both be right.
 *
 * @param words the two, for a message
 * @param help how such a conflict is settled
 */
record Conflict(String words, String help) {}
