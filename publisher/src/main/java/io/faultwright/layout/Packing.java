package io.faultwright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Shares the parts of a chart out to pages: each part, in reading order, goes on the first page
 * that holds it and that is not before the page which leads to it.
 */
final class Packing {
  private final Printer printer;
  private final List<List<Part>> pages = new ArrayList<>();
  private final Map<String, Integer> earliest = new LinkedHashMap<>();

  Packing(Printer printer) {
    this.printer = printer;
  }

  /** The pages, the part of the start on the first. */
  List<List<Part>> pages(String start, Map<String, Part> parts) {
    Map<String, Part> ordered = new LinkedHashMap<>();
    visit(start, parts, ordered);
    ordered.values().forEach(this::add);
    return pages;
  }

  /** Each part after the first that leads to it, and what it leads to next. */
  private static void visit(String id, Map<String, Part> parts, Map<String, Part> ordered) {
    if (ordered.putIfAbsent(id, parts.get(id)) == null) {
      parts.get(id).exits().forEach(next -> visit(next, parts, ordered));
    }
  }

  private void add(Part part) {
    int page = earliest.getOrDefault(part.id(), 0);
    while (page < pages.size() && !holds(pages.get(page), part)) {
      page++;
    }
    if (page == pages.size()) {
      pages.add(List.of());
    }
    pages.set(page, with(pages.get(page), part));
    int here = page;
    part.exits().forEach(next -> earliest.putIfAbsent(next, here));
  }

  private boolean holds(List<Part> page, Part part) {
    List<Part> more = with(page, part);
    int weight = more.stream().mapToInt(one -> Part.weight(one.tree())).sum();
    Optional<Boolean> turned = printer.turned(more);
    return weight <= Part.FULL && turned.isPresent() && turned.equals(printer.turned(page));
  }

  private static List<Part> with(List<Part> page, Part part) {
    return Stream.concat(page.stream(), Stream.of(part)).toList();
  }
}
