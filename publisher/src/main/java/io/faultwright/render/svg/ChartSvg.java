package io.faultwright.render.svg;

import io.faultwright.flow.Node;
import io.faultwright.font.Fonts;
import io.faultwright.layout.Box;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Look;
import io.faultwright.layout.PlacedEdge;
import io.faultwright.layout.PlacedNode;
import io.faultwright.layout.Point;
import io.faultwright.layout.QrSymbol;
import io.faultwright.layout.Text;
import io.faultwright.layout.Trail;
import io.faultwright.words.Words;
import io.faultwright.xml.Xml;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes a page of a chart as SVG 1.1; nothing in it points outside. */
public final class ChartSvg {
  private static final double ARROW_LENGTH = 6;
  private static final double ARROW_HALF_WIDTH = 2.5;
  private static final double STRONG_LINE = 3;
  private static final String PALE = "0.3";

  private final Xml xml = new Xml();
  private final ChartPage page;
  private final Words say;
  private final Emphasis emphasis;

  private ChartSvg(ChartPage page, Words say, Emphasis emphasis) {
    this.say = say;
    this.page = page;
    this.emphasis = emphasis;
  }

  /** An {@code svg} element for a page of HTML that brings the font itself. */
  public static String inline(ChartPage page) {
    return new ChartSvg(page, Words.ENGLISH, Emphasis.NONE).write(false);
  }

  /** The same as far as a way has come: strong along the way, pale beside it. */
  public static String inline(ChartPage page, Words say, Emphasis emphasis) {
    return new ChartSvg(page, say, emphasis).write(false);
  }

  /** A part of it, without head and foot. */
  public static String part(ChartPage page, Words say, Emphasis emphasis, Box part) {
    return new ChartSvg(page, say, emphasis).write(false, part);
  }

  /** A whole file that brings its font along. */
  public static String standalone(ChartPage page) {
    return standalone(page, Words.ENGLISH);
  }

  /** As above, described in a language. */
  public static String standalone(ChartPage page, Words say) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + new ChartSvg(page, say, Emphasis.NONE).write(true);
  }

  /** How strongly something is drawn. */
  public enum Strength {
    STRONG,
    PLAIN,
    PALE,
    /** As strong, and looked at now. */
    HERE
  }

  /** How strongly the figures and lines of a page are drawn, by their positions on it. */
  public interface Emphasis {
    /** All alike. */
    Emphasis NONE =
        new Emphasis() {
          @Override
          public Strength node(int position) {
            return Strength.PLAIN;
          }

          @Override
          public Strength edge(int position) {
            return Strength.PLAIN;
          }
        };

    Strength node(int position);

    Strength edge(int position);

    /** Along a way on one of its pages. */
    static Emphasis along(Trail trail, int page) {
      return new Emphasis() {
        @Override
        public Strength node(int position) {
          if (trail.endsAt(page, position)) {
            return Strength.HERE;
          }
          return trail.comesTo(page, position) ? Strength.STRONG : Strength.PALE;
        }

        @Override
        public Strength edge(int position) {
          return trail.goesAlong(page, position) ? Strength.STRONG : Strength.PALE;
        }
      };
    }
  }

  private String write(boolean withFont) {
    return write(withFont, new Box(0, 0, page.width(), page.height()));
  }

  private String write(boolean withFont, Box shown) {
    boolean whole = shown.width() == page.width() && shown.height() == page.height();
    xml.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "chart",
        "width",
        shown.width(),
        "height",
        shown.height(),
        "viewBox",
        Stream.of(shown.x(), shown.y(), shown.width(), shown.height())
            .map(Xml::number)
            .collect(Collectors.joining(" ")),
        "role",
        "img",
        // Texts stand where they were placed, also on a page that runs from right to left.
        "direction",
        "ltr",
        "font-family",
        "'" + Fonts.FAMILY + "', sans-serif",
        "fill",
        Outline.INK);
    xml.text("title", say.say("{0}, page {1} of {2}", page.title(), page.number(), page.count()));
    xml.text("desc", description());
    if (withFont) {
      xml.text("style", fontFaces());
    }
    xml.empty("rect", "width", page.width(), "height", page.height(), "fill", "#fff");
    if (whole) {
      frame();
    }
    IntStream.range(0, page.edges().size()).forEach(this::edge);
    IntStream.range(0, page.nodes().size()).forEach(this::node);
    return xml.close().toString();
  }

  private String description() {
    return say.say(
        "Decision flowchart. Checks: {0}. Outcomes: {1}. The steps stand as text in the handbook.",
        count(Node.Check.class), count(Node.Outcome.class));
  }

  private long count(Class<? extends Node> kind) {
    return page.nodes().stream().map(PlacedNode::node).filter(kind::isInstance).count();
  }

  private static String fontFaces() {
    return Fonts.web().stream()
        .filter(font -> font.name().contains("-latin-") && !font.name().contains("-ext-"))
        .map(ChartSvg::fontFace)
        .collect(Collectors.joining("\n"));
  }

  private static String fontFace(Fonts.WebFont font) {
    return String.format(
        Locale.ROOT,
        "@font-face { font-family: '%s'; font-weight: %d;"
            + " src: url(data:font/woff2;base64,%s) format('woff2'); }",
        Fonts.FAMILY,
        font.weight(),
        Base64.getEncoder().encodeToString(font.bytes()));
  }

  private void frame() {
    xml.open("g", "class", "frame");
    Outline outline = new Outline(xml);
    page.frame().forEach(outline::draw);
    page.texts().forEach(this::text);
    page.code().ifPresent(this::code);
    xml.close();
  }

  /** The modules of a code as one path; its edges are not smoothed, which would leave gaps. */
  private void code(QrSymbol code) {
    xml.open("g", "class", "code");
    xml.text("title", code.alt(say));
    xml.empty("path", "d", path(code.dark()), "shape-rendering", "crispEdges");
    xml.close();
  }

  private static String path(List<Box> boxes) {
    return boxes.stream()
        .map(
            box ->
                "M"
                    + Outline.pair(box.x(), box.y())
                    + "h"
                    + Xml.number(box.width())
                    + "v"
                    + Xml.number(box.height())
                    + "h"
                    + Xml.number(-box.width())
                    + "z")
        .collect(Collectors.joining());
  }

  private void node(int position) {
    PlacedNode node = page.nodes().get(position);
    String id = node.node().id();
    switch (emphasis.node(position)) {
      case PALE -> xml.open("g", "class", "node", "data-node", id, "opacity", PALE);
      case HERE -> xml.open("g", "class", "node here", "data-node", id);
      default -> xml.open("g", "class", "node", "data-node", id);
    }
    Outline outline = new Outline(xml);
    node.shapes().forEach(outline::draw);
    node.texts().forEach(this::text);
    xml.close();
  }

  private void edge(int position) {
    PlacedEdge edge = page.edges().get(position);
    Strength strength = emphasis.edge(position);
    if (strength == Strength.PALE) {
      xml.open("g", "class", "edge", "opacity", PALE);
    } else {
      xml.open("g", "class", "edge");
    }
    xml.empty(
        "polyline",
        "points",
        points(edge),
        "fill",
        "none",
        "stroke",
        Outline.INK,
        "stroke-width",
        strength == Strength.STRONG ? STRONG_LINE : Look.LINE);
    Point tip = edge.line().get(edge.line().size() - 1);
    xml.empty("polygon", "points", arrow(tip));
    edge.label().forEach(this::text);
    xml.close();
  }

  private static String points(PlacedEdge edge) {
    return edge.line().stream()
        .map(point -> Outline.pair(point.x(), point.y()))
        .collect(Collectors.joining(" "));
  }

  private static String arrow(Point tip) {
    double base = tip.y() - ARROW_LENGTH;
    return Outline.pair(tip.x(), tip.y())
        + " "
        + Outline.pair(tip.x() - ARROW_HALF_WIDTH, base)
        + " "
        + Outline.pair(tip.x() + ARROW_HALF_WIDTH, base);
  }

  private void text(Text text) {
    PlacedText.write(xml, text);
  }
}
