package io.faultwright.analysis.random;

import io.faultwright.model.Build;
import java.util.Map;

/**
 * One complete situation of the brute-force search.
 *
 * @param build the equipment
 * @param values by reading: a word, a {@link Long} in units of 1/{@link Oracle#SCALE}, or {@link
 *     #REFUSED}; readings that the equipment lacks are left out
 */
record Point(Build build, Map<String, Object> values) {
  /** The reading cannot be taken. */
  static final Object REFUSED = new Object();
}
