package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * Every release there was when this one was made.
 *
 * @param items the newest first
 * @param bulletin what the newest changes, if anything
 * @param all the page that also lists later ones
 */
public record ReleasesSection(List<Item> items, Optional<Link> bulletin, Link all)
    implements Content {
  public ReleasesSection {
    items = List.copyOf(items);
  }

  /**
   * One release.
   *
   * @param link to its site
   * @param date of the release
   * @param current whether it is the one that is read
   */
  public record Item(Link link, String date, boolean current) {}
}
