package io.faultwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shares the parts of a chart out to pages: each part, in reading order, goes on the first page
 * that holds it and that is not before the page which leads to it.
 */
final class Packing {
  private final Printer printer;
  private final int most;
  private final List<Filling> pages = new ArrayList<>();
  private final Map<String, Integer> earliest = new HashMap<>();

  /**
   * Pages to be filled.
   *
   * @param most with more pages than this the packing is given up
   */
  Packing(Printer printer, int most) {
    this.printer = printer;
    this.most = most;
  }

  /** The pages, the part of the start on the first; none where they would be too many. */
  Optional<List<Filling>> pages(String start, Map<String, Part> parts) {
    Map<String, Part> ordered = new LinkedHashMap<>();
    visit(start, parts, ordered);
    boolean few = ordered.values().stream().allMatch(this::add);
    return few ? Optional.of(pages) : Optional.empty();
  }

  /** Each part after the first that leads to it, and what it leads to next. */
  private static void visit(String id, Map<String, Part> parts, Map<String, Part> ordered) {
    if (ordered.putIfAbsent(id, parts.get(id)) == null) {
      parts.get(id).exits().forEach(next -> visit(next, parts, ordered));
    }
  }

  /** Puts a part on a page; false if there are too many pages then. */
  private boolean add(Part part) {
    int page = earliest.getOrDefault(part.id(), 0);
    while (page < pages.size() && !pages.get(page).take(part)) {
      page++;
    }
    if (page == pages.size()) {
      pages.add(new Filling(part, printer));
    }
    int here = page;
    part.exits().forEach(next -> earliest.putIfAbsent(next, here));
    return pages.size() <= most;
  }
}
