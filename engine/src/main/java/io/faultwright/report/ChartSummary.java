package io.faultwright.report;

import java.util.Optional;

/**
 * What was proved about one authored chart.
 *
 * @param id id of the chart
 * @param symptom id of the symptom it works
 * @param proved whether every possible situation ends at what the rules say; absent where not
 *     computed
 * @param effort what it takes on average, beside the cheapest order; absent where it is not proved,
 *     or where that was not computed
 */
public record ChartSummary(
    String id, String symptom, Optional<Boolean> proved, Optional<ChartEffort> effort) {}
