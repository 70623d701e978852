package io.faultwright.page;

/**
 * Words that lead somewhere.
 *
 * @param text what is printed
 * @param href where it leads
 */
public record Link(String text, String href) {}
