package io.faultwright.page;

/**
 * A short labelled line.
 *
 * @param label what it is about
 * @param text what is so
 */
public record Fact(String label, String text) {}
