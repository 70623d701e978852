package io.faultwright.page;

/**
 * A caution as printed.
 *
 * @param anchor of the full text on the safety page
 * @param style name of its looks: the signal word in lower case
 * @param word the signal word of ANSI Z535.6
 * @param alert whether the safety alert symbol belongs to it: people can be hurt
 * @param text the hazard and how to avoid it
 */
public record CautionPanel(String anchor, String style, String word, boolean alert, String text) {}
