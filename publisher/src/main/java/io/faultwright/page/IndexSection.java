package io.faultwright.page;

import java.util.List;

/**
 * Everything by name.
 *
 * @param letters in alphabetical order
 */
public record IndexSection(List<Letter> letters) implements Content {
  /** One initial. */
  public record Letter(String letter, List<Entry> entries) {}

  /** One name, with what it is. */
  public record Entry(Link link, String kind) {}
}
