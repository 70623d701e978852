package io.faultwright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.flow.Edge;
import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.Node.Connector.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What must hold of every page of every chart. */
final class PageLaws {
  /** Glyphs may stand out of the measured line by this much. */
  private static final double SLACK = 0.5;

  private PageLaws() {}

  static void check(Flowchart chart, List<ChartPage> pages, Paper paper) {
    for (ChartPage page : pages) {
      assertEquals(Set.of(paper.width(), paper.height()), Set.of(page.width(), page.height()));
    }
    checkOnAnyPaper(chart, pages);
  }

  static void checkOnAnyPaper(Flowchart chart, List<ChartPage> pages) {
    for (ChartPage page : pages) {
      checkSheet(page, pages.size());
      checkTexts(page);
      checkBoxes(page);
      checkLabels(page);
      checkLines(page);
      checkOrder(page);
      checkFrame(page);
    }
    checkSides(pages);
    checkComplete(chart, pages);
    checkConnectors(pages);
  }

  private static void checkSheet(ChartPage page, int count) {
    assertEquals(count, page.count());
    Box sheet = inset(new Box(0, 0, page.width(), page.height()), 28);
    allBoxes(page).forEach(box -> assertInside(sheet, box));
  }

  private static Stream<Box> allBoxes(ChartPage page) {
    return Stream.of(
            page.nodes().stream().map(PlacedNode::box),
            page.nodes().stream().flatMap(node -> node.shapes().stream()).map(Shape::box),
            texts(page).map(Text::box),
            page.frame().stream().map(Shape::box),
            page.code().stream().map(QrSymbol::box),
            stretches(page).stream())
        .flatMap(boxes -> boxes);
  }

  private static Stream<Text> texts(ChartPage page) {
    return Stream.of(
            page.texts().stream(),
            page.nodes().stream().flatMap(node -> node.texts().stream()),
            page.edges().stream().flatMap(edge -> edge.label().stream()))
        .flatMap(texts -> texts);
  }

  private static void checkTexts(ChartPage page) {
    texts(page)
        .forEach(text -> assertTrue(text.size() >= Typography.SMALLEST, () -> "small: " + text));
    for (PlacedNode node : page.nodes()) {
      for (Text text : node.texts()) {
        assertTrue(
            node.shapes().stream().anyMatch(shape -> holds(shape, text.box()))
                || node.node() instanceof Connector,
            () -> text + " is in no outline of " + node.node().id());
      }
    }
  }

  private static boolean holds(Shape shape, Box text) {
    return switch (shape.kind()) {
      case PROCESS -> inside(shape.box(), text);
      case DECISION -> inDiamond(shape.box(), text);
      case START, FAULT, REFERRAL, ESCALATION -> inTerminator(shape.box(), text);
      case CONNECTOR -> inside(shape.box(), text);
      default -> false;
    };
  }

  private static boolean inDiamond(Box diamond, Box text) {
    double dx = Math.max(diamond.centreX() - text.x(), text.right() - diamond.centreX());
    double dy = Math.max(diamond.centreY() - text.y(), text.bottom() - diamond.centreY());
    return dx / diamond.width() + dy / diamond.height() <= 0.5;
  }

  private static boolean inTerminator(Box terminator, Box text) {
    double radius = terminator.height() / 2;
    double dx =
        Math.max(
            0,
            Math.max(
                terminator.x() + radius - text.x(), text.right() - terminator.right() + radius));
    double dy = Math.max(terminator.centreY() - text.y(), text.bottom() - terminator.centreY());
    return Math.hypot(dx, dy) <= radius;
  }

  private static void checkBoxes(ChartPage page) {
    List<PlacedNode> nodes = page.nodes();
    for (int i = 0; i < nodes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertFalse(nodes.get(i).box().overlaps(nodes.get(j).box()), "nodes overlap");
      }
      List<Text> texts = nodes.get(i).texts();
      for (int a = 0; a < texts.size(); a++) {
        Box mark = inset(texts.get(a).box(), SLACK);
        nodes.get(i).shapes().stream()
            .filter(shape -> shape.kind() == Shape.Kind.ALERT || shape.kind() == Shape.Kind.LINK)
            .forEach(shape -> assertFalse(mark.overlaps(shape.box()), "text on a symbol"));
        for (int b = 0; b < a; b++) {
          Box one = inset(texts.get(a).box(), SLACK);
          assertFalse(one.overlaps(inset(texts.get(b).box(), SLACK)), "lines of text overlap");
        }
      }
    }
  }

  private static void checkLabels(ChartPage page) {
    List<Text> labels = page.edges().stream().flatMap(edge -> edge.label().stream()).toList();
    for (int i = 0; i < labels.size(); i++) {
      Box label = inset(labels.get(i).box(), SLACK);
      for (PlacedNode node : page.nodes()) {
        assertFalse(label.overlaps(node.box()), "an answer lies on a node");
      }
      for (int j = 0; j < i; j++) {
        assertFalse(label.overlaps(labels.get(j).box()), "answers overlap");
      }
      for (Box stretch : stretches(page)) {
        assertFalse(label.overlaps(stretch), "an answer lies on a line");
      }
    }
  }

  private static List<Box> stretches(ChartPage page) {
    List<Box> stretches = new ArrayList<>();
    for (PlacedEdge edge : page.edges()) {
      for (int i = 1; i < edge.line().size(); i++) {
        stretches.add(stretch(edge.line().get(i - 1), edge.line().get(i)));
      }
    }
    return stretches;
  }

  private static Box stretch(Point a, Point b) {
    return new Box(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.abs(a.x() - b.x()),
        Math.abs(a.y() - b.y()));
  }

  private static void checkLines(ChartPage page) {
    for (PlacedEdge edge : page.edges()) {
      for (int i = 1; i < edge.line().size(); i++) {
        Box stretch = stretch(edge.line().get(i - 1), edge.line().get(i));
        assertTrue(stretch.width() == 0 || stretch.height() == 0, "a line is not upright");
        for (PlacedNode node : page.nodes()) {
          assertFalse(stretch.overlaps(inset(node.box(), 0.5)), "a line runs through a node");
        }
      }
      checkEnds(page, edge);
    }
    checkCrossings(page);
  }

  /** A line starts in the middle of a node's foot and ends in the middle of another's head. */
  private static void checkEnds(ChartPage page, PlacedEdge edge) {
    Point first = edge.line().get(0);
    Point last = edge.line().get(edge.line().size() - 1);
    assertTrue(
        named(page, edge.from())
            .anyMatch(box -> box.centreX() == first.x() && box.bottom() == first.y()),
        () -> "the line to " + edge.to() + " starts beside its node");
    assertTrue(
        named(page, edge.to()).anyMatch(box -> box.centreX() == last.x() && box.y() == last.y()),
        () -> "the line to " + edge.to() + " ends beside its node");
  }

  private static Stream<Box> named(ChartPage page, String id) {
    return page.nodes().stream().filter(node -> node.node().id().equals(id)).map(PlacedNode::box);
  }

  /** Lines of different nodes have no point in common: all that is drawn on a page is a tree. */
  private static void checkCrossings(ChartPage page) {
    assertEquals(0, crossings(page), () -> "crossings on page " + page.number());
  }

  /** How often lines of different nodes meet. */
  static int crossings(ChartPage page) {
    List<PlacedEdge> edges = page.edges();
    int crossings = 0;
    for (int i = 0; i < edges.size(); i++) {
      for (int j = 0; j < i; j++) {
        PlacedEdge one = edges.get(i);
        PlacedEdge other = edges.get(j);
        boolean related = one.line().get(0).equals(other.line().get(0));
        crossings += !related && meet(one, other) ? 1 : 0;
      }
    }
    return crossings;
  }

  /** Head, foot and cautions lie on nothing: no text, no rule, no symbol, nothing of the chart. */
  private static void checkFrame(ChartPage page) {
    List<Box> others = new ArrayList<>();
    page.frame().stream()
        .filter(shape -> shape.kind() != Shape.Kind.FRAME)
        .forEach(shape -> others.add(shape.box()));
    page.nodes().forEach(node -> others.add(node.box()));
    others.addAll(stretches(page));
    page.edges().forEach(edge -> edge.label().forEach(text -> others.add(text.box())));
    page.code()
        .ifPresent(
            code -> {
              others.forEach(box -> assertFalse(code.box().overlaps(box), "something on the code"));
              others.add(code.box());
            });
    List<Text> texts = page.texts();
    for (int i = 0; i < texts.size(); i++) {
      Box text = inset(texts.get(i).box(), SLACK);
      for (Box other : others) {
        assertFalse(text.overlaps(other), "text of the frame lies on something");
      }
      for (int j = 0; j < i; j++) {
        assertFalse(text.overlaps(inset(texts.get(j).box(), SLACK)), "lines of the frame overlap");
      }
    }
  }

  /** Of two answers the same stands left on all pages, whatever question they answer. */
  static void checkSides(List<ChartPage> pages) {
    Map<String, Set<String>> rightOf = new TreeMap<>();
    for (ChartPage page : pages) {
      for (PlacedEdge left : page.edges()) {
        page.edges().stream()
            .filter(edge -> edge.line().get(0).equals(left.line().get(0)))
            .filter(edge -> end(edge) > end(left))
            .forEach(
                right ->
                    rightOf.computeIfAbsent(words(left), k -> new TreeSet<>()).add(words(right)));
      }
    }
    rightOf.forEach(
        (left, all) ->
            all.forEach(
                right ->
                    assertFalse(
                        !left.equals(right) && rightOf.getOrDefault(right, Set.of()).contains(left),
                        () -> left + " and " + right + " change sides")));
  }

  private static double end(PlacedEdge edge) {
    return edge.line().get(edge.line().size() - 1).x();
  }

  private static String words(PlacedEdge edge) {
    return edge.label().stream().map(Text::content).collect(Collectors.joining(" "));
  }

  /** The answers as drawn, left to right, are those of the chart, in its order. */
  static void checkModelOrder(Flowchart chart, List<ChartPage> pages) {
    for (ChartPage page : pages) {
      Map<Point, List<PlacedEdge>> drawn =
          page.edges().stream().collect(Collectors.groupingBy(edge -> edge.line().get(0)));
      drawn.values().stream()
          .filter(edges -> chart.nodes().get(edges.get(0).from()) instanceof Node.Check)
          .forEach(edges -> checkModelOrder(chart, edges.get(0).from(), edges));
    }
  }

  private static void checkModelOrder(Flowchart chart, String id, List<PlacedEdge> drawn) {
    List<String> left =
        drawn.stream()
            .sorted(Comparator.comparing(PageLaws::end))
            .map(PageLaws::words)
            .filter(words -> !words.equals("None of these"))
            .toList();
    List<String> model = chart.from(id).stream().map(Edge::answer).limit(left.size()).toList();
    assertEquals(model, left, () -> "answers of " + id);
  }

  private static boolean meet(PlacedEdge one, PlacedEdge other) {
    for (int i = 1; i < one.line().size(); i++) {
      for (int j = 1; j < other.line().size(); j++) {
        Box a = stretch(one.line().get(i - 1), one.line().get(i));
        Box b = stretch(other.line().get(j - 1), other.line().get(j));
        if (a.x() <= b.right()
            && b.x() <= a.right()
            && a.y() <= b.bottom()
            && b.y() <= a.bottom()) {
          return true;
        }
      }
    }
    return false;
  }

  /** Answers stand from left to right in their order; what stands in no order is a mistake. */
  private static void checkOrder(ChartPage page) {
    for (int i = 1; i < page.edges().size(); i++) {
      PlacedEdge left = page.edges().get(i - 1);
      PlacedEdge right = page.edges().get(i);
      if (left.line().get(0).equals(right.line().get(0))) {
        double before = left.line().get(left.line().size() - 1).x();
        assertTrue(before < right.line().get(right.line().size() - 1).x(), "answers change sides");
      }
    }
  }

  /** Every node of the chart is drawn, and every answer as often as its node. */
  private static void checkComplete(Flowchart chart, List<ChartPage> pages) {
    Map<String, Integer> drawn = new TreeMap<>();
    for (ChartPage page : pages) {
      page.nodes().forEach(node -> drawn.merge(node.node().id(), 1, Integer::sum));
    }
    assertTrue(drawn.keySet().containsAll(chart.nodes().keySet()), "a node is missing");
    Map<String, Integer> checks = new TreeMap<>(drawn);
    checks.keySet().removeIf(id -> !(chart.nodes().get(id) instanceof Node.Check));
    checks.forEach((id, times) -> checkAnswers(chart, pages, id, times));
  }

  private static void checkAnswers(Flowchart chart, List<ChartPage> pages, String id, int times) {
    long lines =
        pages.stream()
            .flatMap(page -> page.edges().stream())
            .filter(edge -> edge.from().equals(id) || edge.from().startsWith(id + "/"))
            .filter(edge -> !edge.to().startsWith(id + "/"))
            .filter(edge -> !edge.to().startsWith("to-" + id + "/"))
            .count();
    assertEquals((long) times * chart.from(id).size(), lines, () -> "answers of " + id);
  }

  /** Both ends of a jump carry the same mark and name each other's page; marks are unique. */
  private static void checkConnectors(List<ChartPage> pages) {
    Map<String, Integer> entries = new TreeMap<>();
    Map<String, Set<Integer>> exits = new TreeMap<>();
    for (ChartPage page : pages) {
      connectors(page, Side.ENTRY)
          .forEach(end -> assertEquals(null, entries.put(end.mark(), page.number()), "mark twice"));
      connectors(page, Side.EXIT)
          .forEach(
              end -> exits.computeIfAbsent(end.mark(), k -> new TreeSet<>()).add(page.number()));
    }
    assertEquals(entries.keySet(), exits.keySet(), "a jump with one end");
    for (ChartPage page : pages) {
      connectors(page, Side.EXIT)
          .forEach(end -> assertEquals(List.of(entries.get(end.mark())), end.pages()));
      connectors(page, Side.ENTRY)
          .forEach(end -> assertEquals(exits.get(end.mark()), new HashSet<>(end.pages())));
    }
  }

  private static Stream<Connector> connectors(ChartPage page, Side side) {
    return page.nodes().stream()
        .map(PlacedNode::node)
        .filter(node -> node instanceof Connector connector && connector.side() == side)
        .map(Connector.class::cast);
  }

  private static Box inset(Box box, double by) {
    return new Box(box.x() + by, box.y() + by, box.width() - 2 * by, box.height() - 2 * by);
  }

  private static boolean inside(Box outer, Box inner) {
    return outer.x() <= inner.x()
        && outer.y() <= inner.y()
        && inner.right() <= outer.right()
        && inner.bottom() <= outer.bottom();
  }

  private static void assertInside(Box outer, Box inner) {
    assertTrue(inside(outer, inner), () -> inner + " is not inside " + outer);
  }
}
