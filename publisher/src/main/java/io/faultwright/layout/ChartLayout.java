package io.faultwright.layout;

import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lays a flowchart out on paper: on one page where it fits in legible type, else on several joined
 * by connectors.
 */
public final class ChartLayout {
  /** Least text size; charts that do not fit in it take several pages. */
  private static final double PAGED = Typography.SMALLEST + 0.5;

  /** Text sizes tried for a single page, largest first; the small print is half a point less. */
  private static final List<Double> SIZES = List.of(12.0, 11.0, 10.0, 9.5, PAGED);

  /** Most nodes that are tried on a single page. */
  private static final int MOST_ON_ONE = 16;

  private final Imprint imprint;
  private final Paper paper;

  /** A layout for a handbook on a size of paper. */
  public ChartLayout(Imprint imprint, Paper paper) {
    this.imprint = imprint;
    this.paper = paper;
  }

  /** The pages of a chart that stands on paper only, in order. */
  public List<ChartPage> pages(Flowchart chart) {
    return pages(chart, Optional.empty());
  }

  /** The pages of a chart, in order, with the address of its page online. */
  public List<ChartPage> pages(Flowchart chart, Optional<String> address) {
    return new Run(chart.start(), address).pages(new Unfolding(chart, imprint.say()));
  }

  /** The layout of one chart. */
  private final class Run {
    private final Node.Start start;
    private final Optional<OnlinePage> online;

    Run(Node.Start start, Optional<String> address) {
      this.start = start;
      this.online = address.map(OnlinePage::of);
    }

    List<ChartPage> pages(Unfolding unfolding) {
      Optional<ChartPage> single =
          unfolding.size() <= MOST_ON_ONE ? single(unfolding.whole()) : Optional.empty();
      return single.map(List::of).orElseGet(() -> several(unfolding.parts()));
    }

    private Optional<ChartPage> single(Tree tree) {
      List<Part> parts = List.of(Part.of(tree));
      return SIZES.stream()
          .map(size -> printer(size).print(parts, 1, 1))
          .flatMap(Optional::stream)
          .findFirst();
    }

    private List<ChartPage> several(List<Tree> trees) {
      Printer printer = printer(PAGED);
      List<List<Part>> pages = new PageBreaks(start.id(), trees, printer).pages();
      Numbering numbering = new Numbering(pages);
      List<List<Part>> numbered =
          pages.stream().map(page -> page.stream().map(numbering::numbered).toList()).toList();
      return SIZES.stream()
          .map(size -> print(printer(size), numbered))
          .flatMap(Optional::stream)
          .findFirst()
          .orElseGet(() -> printOnLargerPaper(printer, numbered));
    }

    private Printer printer(double size) {
      return new Printer(size, paper, imprint, start, online);
    }
  }

  /** For texts so long that one check fills more than a page. */
  private static List<ChartPage> printOnLargerPaper(Printer printer, List<List<Part>> parts) {
    return IntStream.range(0, parts.size())
        .mapToObj(i -> printer.printOnLargerPaper(parts.get(i), i + 1, parts.size()))
        .toList();
  }

  /** All pages at one text size, if they fit. */
  private static Optional<List<ChartPage>> print(Printer printer, List<List<Part>> parts) {
    List<ChartPage> pages = new ArrayList<>();
    for (List<Part> page : parts) {
      Optional<ChartPage> printed = printer.print(page, pages.size() + 1, parts.size());
      if (printed.isEmpty()) {
        return Optional.empty();
      }
      pages.add(printed.get());
    }
    return Optional.of(pages);
  }
}
