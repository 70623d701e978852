package io.faultwright.layout;

import io.faultwright.flow.Imprint;
import io.faultwright.flow.Node;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Sets parts on a page at one text size, upright or across, whichever fits. */
final class Printer {
  private final List<Typography> types;
  private final Paper paper;
  private final Imprint imprint;
  private final Node.Start start;
  private final Map<Typography, Map<Tree, Placement>> placed = new HashMap<>();

  /** A printer of one chart at one text size. */
  Printer(double size, Paper paper, Imprint imprint, Node.Start start) {
    this.types = List.of(new Typography(size, true), new Typography(size, false));
    this.paper = paper;
    this.imprint = imprint;
    this.start = start;
  }

  boolean fits(List<Part> parts) {
    return print(parts, 1, 1).isPresent();
  }

  /** The page, if the parts fit on one. */
  Optional<ChartPage> print(List<Part> parts, int number, int count) {
    return Stream.of(
            print(parts, number, count, paper.width(), paper.height()),
            print(parts, number, count, paper.height(), paper.width()))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<ChartPage> print(
      List<Part> parts, int number, int count, int width, int height) {
    PageFrame frame = new PageFrame(imprint, start, parts, width, height);
    return types.stream()
        .map(type -> new Sheet(frame.room()).packed(placements(parts, type)))
        .flatMap(Optional::stream)
        .findFirst()
        .map(
            placed ->
                new ChartPage(
                    width,
                    height,
                    number,
                    count,
                    start.title(),
                    frame.shapes(),
                    frame.texts(number, count),
                    placed.stream().flatMap(part -> part.nodes().stream()).toList(),
                    placed.stream().flatMap(part -> part.edges().stream()).toList()));
  }

  private List<Placement> placements(List<Part> parts, Typography type) {
    return parts.stream().map(part -> placement(part.tree(), type)).toList();
  }

  private Placement placement(Tree tree, Typography type) {
    return placed
        .computeIfAbsent(type, none -> new IdentityHashMap<>())
        .computeIfAbsent(tree, none -> new LayeredPlacement(type).place(tree));
  }
}
