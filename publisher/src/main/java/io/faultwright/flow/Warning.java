package io.faultwright.flow;

/**
 * A caution shown before a step.
 *
 * @param word signal word in capitals
 * @param alert whether people can be hurt, which calls for the safety alert symbol
 * @param text the hazard and how to avoid it
 */
public record Warning(String word, boolean alert, String text) {}
