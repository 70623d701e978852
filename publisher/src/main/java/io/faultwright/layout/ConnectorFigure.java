package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.List;

/** Draws a connector: a circle with its mark, and which page the other end is on. */
final class ConnectorFigure {
  private final Typography type;

  ConnectorFigure(Typography type) {
    this.type = type;
  }

  Figure of(Node.Connector connector) {
    return connector.side() == Node.Connector.Side.EXIT ? exit(connector) : entry(connector);
  }

  /** The page stands below, out of the way of neighbours. */
  private Figure exit(Node.Connector connector) {
    double width = Grid.even(Math.max(diameter(), pageWidth(page(999))));
    Text page = pageText(page(connector.pages().get(0)), width / 2, Text.Anchor.MIDDLE);
    return new Figure(
        width,
        diameter() + type.smallLeading(),
        List.of(circle(width)),
        List.of(mark(connector, width), page.shifted(0, diameter())));
  }

  /** The page stands beside, as the line goes on below. */
  private Figure entry(Node.Connector connector) {
    double width = Grid.even(diameter() + 2 * (pageWidth(origin(List.of(999, 999))) + 4));
    Text page =
        pageText(origin(connector.pages()), (width + diameter()) / 2 + 4, Text.Anchor.START);
    return new Figure(
        width,
        diameter(),
        List.of(circle(width)),
        List.of(mark(connector, width), page.shifted(0, (diameter() - type.smallLeading()) / 2)));
  }

  private String page(int number) {
    return type.say().say("page {0}", number);
  }

  private String origin(List<Integer> pages) {
    return switch (pages.size()) {
      case 1 -> type.say().say("from page {0}", pages.get(0));
      case 2 -> type.say().say("from pages {0}, {1}", pages.get(0), pages.get(1));
      default -> type.say().say("from {0} pages", pages.size());
    };
  }

  private double diameter() {
    return Grid.even(type.size() * 2.4);
  }

  private Shape circle(double width) {
    Box box = new Box((width - diameter()) / 2, 0, diameter(), diameter());
    return new Shape(Shape.Kind.CONNECTOR, box);
  }

  private Text mark(Node.Connector connector, double width) {
    double size = type.size() + 2;
    double baseline = Grid.half(diameter() / 2 + size * 0.35);
    return new Text(connector.mark(), width / 2, baseline, size, true, Text.Anchor.MIDDLE);
  }

  private Text pageText(String text, double x, Text.Anchor anchor) {
    double baseline = Typography.ascent(type.smallLeading());
    return new Text(text, x, baseline, type.small(), false, anchor);
  }

  private double pageWidth(String text) {
    return Typography.width(text, type.small(), false);
  }
}
