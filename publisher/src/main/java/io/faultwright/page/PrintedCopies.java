package io.faultwright.page;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What of the printed copies of an earlier revision is no longer right. Revision and date do not
 * count: a copy that differs in nothing else is still right.
 *
 * @param charts the chart pages of each symptom that differ, by its id
 * @param cards ids of the symptoms whose pocket card differs
 * @param pages the pages of the handbook that differ, those included that came or went
 */
public record PrintedCopies(
    SortedMap<String, ChartPages> charts, SortedSet<String> cards, List<Target> pages) {
  public PrintedCopies {
    charts = Collections.unmodifiableSortedMap(new TreeMap<>(charts));
    cards = Collections.unmodifiableSortedSet(new TreeSet<>(cards));
    pages = List.copyOf(pages);
  }

  /**
   * Chart pages of a symptom.
   *
   * @param stale those of the earlier revision that are not drawn so any more
   * @param fresh those that were not drawn so before
   */
  public record ChartPages(List<ChartSheet> stale, List<Fresh> fresh) {
    public ChartPages {
      stale = List.copyOf(stale);
      fresh = List.copyOf(fresh);
    }

    /** Whether every page is drawn as it was. */
    public boolean none() {
      return stale.isEmpty() && fresh.isEmpty();
    }
  }

  /**
   * A page that was not drawn so before.
   *
   * @param sheet the page
   * @param number among all chart pages of the symptom, from 1
   */
  public record Fresh(ChartSheet sheet, int number) {}
}
