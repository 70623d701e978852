package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Goal;
import io.faultwright.model.Condition;
import java.util.function.Predicate;

/**
 * A goal beside a threshold or a limit.
 *
 * @param goal what should be shown
 * @param key equal for edges that are the same whatever rule they come from
 * @param general whether cases of any symptom show it, as those about a limit do
 * @param where situations that show it, as a condition
 * @param shows whether the readings of a case do
 */
public record Edge(
    Goal goal, String key, boolean general, Condition where, Predicate<Sighting> shows) {}
