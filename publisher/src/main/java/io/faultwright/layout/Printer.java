package io.faultwright.layout;

import io.faultwright.flow.Imprint;
import io.faultwright.flow.Node;
import io.faultwright.flow.Warning;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Sets parts on a page at one text size, upright or turned, whichever fits. */
final class Printer {
  private static final double GROWTH = 1.2;

  private final List<Compositor> compositors;
  private final Paper paper;
  private final Imprint imprint;
  private final Node.Start start;
  private final Optional<OnlinePage> online;
  private final Map<Sized, PageFrame> frames = new HashMap<>();
  private final Map<Part, Optional<Fit>> alone = new IdentityHashMap<>();

  /** A printer of one chart at one text size. */
  Printer(
      double size, Paper paper, Imprint imprint, Node.Start start, Optional<OnlinePage> online) {
    this.compositors =
        Stream.of(true, false)
            .map(broad -> new Compositor(new Typography(size, broad, imprint.say())))
            .toList();
    this.paper = paper;
    this.imprint = imprint;
    this.start = start;
    this.online = online;
  }

  boolean fits(Part part) {
    return fit(part).isPresent();
  }

  /** A page with one part, on paper that is turned if need be; nothing where neither holds it. */
  Optional<Fit> fit(Part part) {
    return alone.computeIfAbsent(
        part, one -> Fit.of(this, List.of(one), false).or(() -> Fit.of(this, List.of(one), true)));
  }

  /** Whether the paper holds parts as it is turned. */
  boolean holds(List<Part> parts, boolean turned) {
    Box room =
        turned
            ? frame(parts, paper.height(), paper.width()).room()
            : frame(parts, paper.width(), paper.height()).room();
    return compositors.stream().anyMatch(compositor -> compositor.fits(parts, room));
  }

  private PageFrame frame(List<Part> parts, int width, int height) {
    Set<Warning> warnings = new HashSet<>();
    parts.forEach(part -> warnings.addAll(part.warnings()));
    return frames.computeIfAbsent(new Sized(warnings, width, height), this::frame);
  }

  private PageFrame frame(Sized sized) {
    List<Warning> warnings = sized.warnings.stream().sorted(CautionPanel.GRAVEST).toList();
    return new PageFrame(imprint, start, online, warnings, sized.width, sized.height);
  }

  /** What the frame of a page depends on. */
  private record Sized(Set<Warning> warnings, int width, int height) {}

  /** The page, if the parts fit on one. */
  Optional<ChartPage> print(List<Part> parts, int number, int count) {
    return print(parts, number, count, paper.width(), paper.height())
        .or(() -> print(parts, number, count, paper.height(), paper.width()));
  }

  /** The page, on paper that grows until it holds even endless texts; they are not cut. */
  ChartPage printOnLargerPaper(List<Part> parts, int number, int count) {
    Optional<ChartPage> page = print(parts, number, count);
    for (double scale = GROWTH; page.isEmpty(); scale *= GROWTH) {
      int width = (int) Math.round(paper.width() * scale);
      int height = (int) Math.round(paper.height() * scale);
      page = print(parts, number, count, width, height);
    }
    return page.get();
  }

  private Optional<ChartPage> print(
      List<Part> parts, int number, int count, int width, int height) {
    PageFrame frame = frame(parts, width, height);
    return compositors.stream()
        .map(compositor -> compositor.set(parts, frame.room()))
        .flatMap(Optional::stream)
        .findFirst()
        .map(placed -> page(placed, frame, number, count));
  }

  private ChartPage page(List<Placement> placed, PageFrame frame, int number, int count) {
    List<PlacedNode> nodes = new ArrayList<>();
    List<PlacedEdge> edges = new ArrayList<>();
    placed.forEach(part -> part.draw(nodes, edges));
    return new ChartPage(
        frame.width(),
        frame.height(),
        number,
        count,
        start.title(),
        frame.shapes(),
        frame.texts(number, count),
        frame.code(),
        nodes,
        edges);
  }
}
