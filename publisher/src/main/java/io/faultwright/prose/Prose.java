package io.faultwright.prose;

import java.util.List;

/**
 * A rendered text.
 *
 * @param html its markup
 * @param dangling links and pictures that lead nowhere, shown as mere text
 */
public record Prose(Html html, List<Dangling> dangling) {
  public Prose {
    dangling = List.copyOf(dangling);
  }

  /**
   * A link or picture that leads nowhere.
   *
   * @param target as written
   * @param line of the text, counted from 1
   * @param column of that line, counted from 1
   */
  public record Dangling(String target, int line, int column) {}
}
