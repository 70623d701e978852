package io.faultwright.layout;

import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Imprint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Lays a flowchart out on paper: on one page where it fits in legible type, else on several joined
 * by connectors.
 */
public final class ChartLayout {
  /** Text sizes tried for a single page, largest first; the small print is half a point less. */
  private static final List<Double> SIZES = List.of(10.0, 9.5, 9.0, 8.5);

  /** Text size of a chart of several pages. */
  private static final double PAGED = 9;

  /** Most nodes that are tried on a single page. */
  private static final int MOST_ON_ONE = 16;

  private final Imprint imprint;
  private final Paper paper;

  /** A layout for a handbook on a size of paper. */
  public ChartLayout(Imprint imprint, Paper paper) {
    this.imprint = imprint;
    this.paper = paper;
  }

  /** The pages of a chart, in order. */
  public List<ChartPage> pages(Flowchart chart) {
    Unfolding unfolding = new Unfolding(chart);
    Optional<ChartPage> single =
        unfolding.size() <= MOST_ON_ONE ? single(chart, unfolding.whole()) : Optional.empty();
    return single.map(List::of).orElseGet(() -> several(chart, unfolding.parts()));
  }

  private Optional<ChartPage> single(Flowchart chart, Tree tree) {
    List<Part> parts = List.of(Part.of(tree));
    return SIZES.stream()
        .map(size -> printer(size, chart).print(parts, 1, 1))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private List<ChartPage> several(Flowchart chart, List<Tree> trees) {
    Printer printer = printer(PAGED, chart);
    Cutting cutting = new Cutting(part -> printer.fits(List.of(part)));
    Map<String, Part> parts = new LinkedHashMap<>();
    trees.stream()
        .flatMap(tree -> cutting.parts(tree).stream())
        .forEach(part -> parts.putIfAbsent(part.id(), part));
    List<List<Part>> pages = packed(inReadingOrder(chart.start().id(), parts), printer);
    Numbering numbering = new Numbering(pages);
    List<ChartPage> printed = new ArrayList<>();
    for (List<Part> page : pages) {
      List<Part> numbered = page.stream().map(numbering::numbered).toList();
      printed.add(printer.print(numbered, printed.size() + 1, pages.size()).orElseThrow());
    }
    return printed;
  }

  private Printer printer(double size, Flowchart chart) {
    return new Printer(size, paper, imprint, chart.start());
  }

  /** Each part after the first that leads to it, and what it leads to next. */
  private static List<Part> inReadingOrder(String start, Map<String, Part> parts) {
    Map<String, Part> ordered = new LinkedHashMap<>();
    visit(start, parts, ordered);
    return List.copyOf(ordered.values());
  }

  private static void visit(String id, Map<String, Part> parts, Map<String, Part> ordered) {
    if (ordered.putIfAbsent(id, parts.get(id)) == null) {
      parts.get(id).exits().forEach(next -> visit(next, parts, ordered));
    }
  }

  /** Parts that follow one another share a page as long as it holds them. */
  private static List<List<Part>> packed(List<Part> parts, Printer printer) {
    List<List<Part>> pages = new ArrayList<>();
    List<Part> open = List.of();
    for (Part part : parts) {
      List<Part> more = Stream.concat(open.stream(), Stream.of(part)).toList();
      boolean fits = weight(more) <= Cutting.FULL && printer.fits(more);
      if (!fits && !open.isEmpty()) {
        pages.add(open);
      }
      open = fits ? more : List.of(part);
    }
    pages.add(open);
    return pages;
  }

  private static int weight(List<Part> parts) {
    return parts.stream().mapToInt(part -> Part.weight(part.tree())).sum();
  }
}
