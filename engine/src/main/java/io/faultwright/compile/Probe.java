package io.faultwright.compile;

/** One test, asked of a situation. */
@FunctionalInterface
interface Probe {
  Truth of(Facts facts);
}
