package io.faultwright.page;

/**
 * One page of a chart.
 *
 * @param svg the drawing, as a standalone SVG file
 * @param scope the equipment it is for; empty where it is everything
 * @param number of the page, from 1
 * @param count of pages that the chart has
 */
public record ChartSheet(String svg, String scope, int number, int count) {}
