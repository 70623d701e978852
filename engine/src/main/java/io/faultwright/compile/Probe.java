package io.faultwright.compile;

import io.faultwright.model.Truth;

/** One test, asked of a situation. */
@FunctionalInterface
interface Probe {
  Truth of(Facts facts);
}
