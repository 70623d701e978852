package io.faultwright.page;

/**
 * A line of a chart's text, set over the drawing so that it stays text in the book; in pixels.
 *
 * @param text as printed
 * @param left of its box
 * @param top of its box
 * @param width of its box
 * @param size of the type
 * @param align {@code left}, {@code center} or {@code right} within the box
 * @param bold whether it is bold
 * @param pale whether it stands beside the way that the drawing shows
 */
public record ChartText(
    String text,
    double left,
    double top,
    double width,
    double size,
    String align,
    boolean bold,
    boolean pale) {}
