package io.faultwright.page;

import io.faultwright.prose.Html;

/**
 * One page of a symptom's chart.
 *
 * @param title what it is, with its number
 * @param href its own file
 * @param svg the drawing
 * @param width of the drawing as set on the page, in pixels
 * @param height of the drawing as set on the page, in pixels
 * @param wide whether it lies on a turned sheet
 */
public record ChartFigure(
    String title, String href, Html svg, int width, int height, boolean wide) {}
