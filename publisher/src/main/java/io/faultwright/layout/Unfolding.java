package io.faultwright.layout;

import io.faultwright.flow.Edge;
import io.faultwright.flow.Flowchart;
import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Check;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Turns a flowchart, in which nodes are shared, into trees that can be drawn. */
final class Unfolding {
  /** More answers are dealt with in several steps, so that a check and its answers fit a page. */
  private static final int MOST_ANSWERS = 6;

  /** A shared check with no more than this below it is drawn again rather than referred to. */
  private static final int REPEATED = 3;

  private final Flowchart chart;
  private final AnswerOrder order;
  private final String otherwise;
  private final Map<String, Integer> sizes = new LinkedHashMap<>();
  private final Map<String, Long> entries;

  Unfolding(Flowchart chart, Words say) {
    this.otherwise = say.say("None of these");
    this.chart = chart;
    this.order = new AnswerOrder(chart);
    this.entries =
        chart.edges().stream().collect(Collectors.groupingBy(Edge::to, Collectors.counting()));
  }

  /** How many nodes the chart has when nothing is shared; huge numbers are cut off. */
  int size() {
    return size(chart.start().id());
  }

  private int size(String id) {
    Integer known = sizes.get(id);
    if (known != null) {
      return known;
    }
    long sum = 1;
    for (Edge edge : order.from(id)) {
      sum += size(edge.to());
    }
    int size = (int) Math.min(sum, 1_000_000);
    sizes.put(id, size);
    return size;
  }

  /** The chart as one tree with every shared node repeated. */
  Tree whole() {
    return tree(chart.start(), false);
  }

  /** The chart as trees, a shared check standing on top of a tree of its own. */
  List<Tree> parts() {
    List<Tree> parts = new ArrayList<>();
    parts.add(tree(chart.start(), true));
    chart.nodes().values().stream()
        .filter(node -> drawnApart(node.id()))
        .forEach(node -> parts.add(tree(node, true)));
    return parts;
  }

  private boolean drawnApart(String id) {
    return entries.getOrDefault(id, 0L) > 1 && size(id) > 1 + REPEATED;
  }

  private Tree tree(Node node, boolean sharing) {
    List<Tree.Limb> limbs = new ArrayList<>();
    for (Edge edge : order.from(node.id())) {
      Tree below =
          sharing && drawnApart(edge.to())
              ? Part.exitTo(edge.to())
              : tree(chart.target(edge), sharing);
      limbs.add(new Tree.Limb(edge.answer(), below));
    }
    return chunked(node, limbs, 2);
  }

  /** A node with few limbs; the same question is asked again for the rest. */
  private Tree chunked(Node node, List<Tree.Limb> limbs, int next) {
    if (limbs.size() <= MOST_ANSWERS || !(node instanceof Check check)) {
      return new Tree(node, limbs);
    }
    List<Tree.Limb> first = new ArrayList<>(limbs.subList(0, MOST_ANSWERS - 1));
    String stem = check.id().replaceAll("/\\d+$", "");
    Check again = new Check(stem + "/" + next, List.of(), List.of(), check.question());
    List<Tree.Limb> rest = limbs.subList(MOST_ANSWERS - 1, limbs.size());
    first.add(new Tree.Limb(otherwise, chunked(again, rest, next + 1)));
    return new Tree(node, first);
  }
}
