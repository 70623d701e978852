package io.faultwright.render.svg;

import io.faultwright.font.Fonts;
import io.faultwright.layout.Box;
import io.faultwright.layout.Point;
import io.faultwright.layout.Text;
import io.faultwright.layout.TimingDiagram;
import io.faultwright.layout.TimingDiagram.PlacedLane;
import io.faultwright.layout.TimingDiagram.PlacedPhase;
import io.faultwright.layout.TimingDiagram.Stroke;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a timing diagram as SVG 1.1; nothing in it points outside or depends on colour. */
public final class TimingSvg {
  private static final String INK = "#000";
  private static final String HIGH = "#d2d2d2";
  private static final String STOPPED = "#bdbdbd";
  private static final double PUSH = 3.5;

  private final Xml xml = new Xml();
  private final TimingDiagram diagram;
  private final Words say;

  private TimingSvg(TimingDiagram diagram, Words say) {
    this.diagram = diagram;
    this.say = say;
  }

  /** An {@code svg} element for a page that brings the font itself. */
  public static String inline(TimingDiagram diagram, Words say) {
    return new TimingSvg(diagram, say).write();
  }

  private String write() {
    open();
    xml.text("title", diagram.title());
    xml.text(
        "desc", say.say("Timing diagram. The same times stand as text in the table above it."));
    xml.empty("rect", "width", diagram.width(), "height", diagram.height(), "fill", "#fff");
    diagram.phases().forEach(this::phase);
    List<Stroke> strokes = diagram.strokes();
    strokes.stream().filter(one -> one.kind() == Stroke.Kind.BOUNDARY).forEach(this::stroke);
    diagram.lanes().forEach(this::lane);
    strokes.stream().filter(one -> one.kind() != Stroke.Kind.BOUNDARY).forEach(this::stroke);
    diagram.texts().forEach(this::text);
    return xml.close().toString();
  }

  private void open() {
    xml.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "timing",
        "width",
        diagram.width(),
        "height",
        diagram.height(),
        "viewBox",
        "0 0 " + Xml.number(diagram.width()) + " " + Xml.number(diagram.height()),
        "role",
        "img",
        // Time runs to the right, also on a page that runs from right to left.
        "direction",
        "ltr",
        "font-family",
        "'" + Fonts.FAMILY + "', sans-serif",
        "fill",
        INK);
  }

  private void phase(PlacedPhase phase) {
    phase.boxes().forEach(box -> box("phase", box, phase.stop() ? STOPPED : "#fff"));
  }

  private void box(String name, Box box, String fill) {
    xml.empty(
        "rect",
        "class",
        name,
        "x",
        box.x(),
        "y",
        box.y(),
        "width",
        box.width(),
        "height",
        box.height(),
        "fill",
        fill);
  }

  private void lane(PlacedLane lane) {
    xml.open("g", "class", "lane");
    lane.filled().forEach(box -> box("on", box, HIGH));
    for (List<Point> line : lane.lines()) {
      xml.empty(
          "polyline", "points", points(line), "fill", "none", "stroke", INK, "stroke-width", 1.5);
    }
    lane.pushes().forEach(tip -> push(tip, lane.low()));
    xml.close();
  }

  /** An arrow that points up from the line. */
  private void push(Point tip, double low) {
    line("push", tip, new Point(tip.x(), low), 1.5, "");
    xml.empty(
        "polygon",
        "points",
        points(
            List.of(
                tip,
                new Point(tip.x() - PUSH, tip.y() + 2 * PUSH),
                new Point(tip.x() + PUSH, tip.y() + 2 * PUSH))));
  }

  private static String points(List<Point> line) {
    return line.stream()
        .map(point -> Outline.pair(point.x(), point.y()))
        .collect(Collectors.joining(" "));
  }

  private void stroke(Stroke stroke) {
    String name = stroke.kind().name().toLowerCase(Locale.ROOT);
    String dashes = stroke.kind() == Stroke.Kind.BOUNDARY ? "1 2" : "";
    line(name, stroke.from(), stroke.to(), weight(stroke.kind()), dashes);
  }

  private static double weight(Stroke.Kind kind) {
    return switch (kind) {
      case STOP -> 2.25;
      case CUT -> 1.25;
      case BAND, AXIS -> 1;
      case BOUNDARY, LEADER -> 0.5;
    };
  }

  private void line(String name, Point from, Point to, double weight, String dashes) {
    xml.empty(
        "line",
        "class",
        name,
        "x1",
        from.x(),
        "y1",
        from.y(),
        "x2",
        to.x(),
        "y2",
        to.y(),
        "stroke",
        INK,
        "stroke-width",
        weight,
        "stroke-dasharray",
        dashes.isEmpty() ? "none" : dashes);
  }

  private void text(Text text) {
    PlacedText.write(xml, text);
  }
}
