package io.faultwright.plain;

import io.faultwright.source.Place;

/**
 * A text that a rule of plain language speaks against.
 *
 * @param rule the rule
 * @param of what the text belongs to, as in {@code fault fan-stands}
 * @param place where it stands
 * @param text the whole step
 * @param reason what in it: lower case, no full stop, words of it in backticks
 */
public record Hint(PlainRule rule, String of, Place place, String text, String reason) {}
