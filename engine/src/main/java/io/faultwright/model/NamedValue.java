package io.faultwright.model;

/**
 * A value of a choice or of an option.
 *
 * @param id identifier, {@code yes} and {@code no} for yes/no readings
 * @param title as printed
 */
public record NamedValue(String id, String title) {}
