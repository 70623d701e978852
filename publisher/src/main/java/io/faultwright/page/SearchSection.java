package io.faultwright.page;

import java.util.List;

/**
 * The page on which everything is looked up, by a script.
 *
 * @param families by which results can be narrowed down; empty where there is but one
 * @param all the list of everything, for those whose device runs no scripts
 */
public record SearchSection(List<Choice> families, Link all) implements Content {
  @Override
  public List<String> scripts() {
    return List.of(SitePaths.SEARCH_SCRIPT, SitePaths.SEARCH_INDEX);
  }

  /** A family. */
  public record Choice(String id, String title) {}
}
