package io.faultwright.flow;

import io.faultwright.analysis.chart.ChartCourse;
import io.faultwright.analysis.order.OrderCost;
import java.util.Optional;

/**
 * An authored chart that can be drawn.
 *
 * @param chart its id
 * @param course its ways through the situations of the symptom
 * @param cost of its order of checks; absent where it is not proved
 */
record Authored(String chart, ChartCourse course, Optional<OrderCost> cost) {}
