package io.faultwright.flow;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The decision flowchart of a symptom. Nodes may be shared: a check or an outcome that several
 * answers lead to stands here once, however often it is drawn.
 *
 * @param symptom id of the symptom
 * @param start where it begins
 * @param nodes every node by id, the start included
 * @param edges the lines; those of one node in the order of its answers
 */
public record Flowchart(
    String symptom, Node.Start start, SortedMap<String, Node> nodes, List<Edge> edges) {
  public Flowchart {
    nodes = Collections.unmodifiableSortedMap(new TreeMap<>(nodes));
    edges = List.copyOf(edges);
    Shape.check(start, nodes, edges);
  }

  /** The lines that leave a node, in the order of its answers. */
  public List<Edge> from(String id) {
    return edges.stream().filter(edge -> edge.from().equals(id)).toList();
  }

  /** The node an edge enters. */
  public Node target(Edge edge) {
    return nodes.get(edge.to());
  }

  /** What must hold of every flowchart; a breach is a mistake of the program, not of the rules. */
  private static final class Shape {
    static void check(Node.Start start, Map<String, Node> nodes, List<Edge> edges) {
      Map<String, List<String>> next =
          edges.stream()
              .collect(
                  Collectors.groupingBy(
                      Edge::from, Collectors.mapping(Edge::to, Collectors.toList())));
      require(start.equals(nodes.get(start.id())), "the start is not among the nodes");
      require(edges.stream().allMatch(e -> nodes.containsKey(e.to())), "an edge leads nowhere");
      require(reached(start.id(), next).equals(nodes.keySet()), "a node cannot be reached");
      nodes.values().forEach(node -> checkExits(node, next.getOrDefault(node.id(), List.of())));
      require(acyclic(next), "the chart runs in a circle");
    }

    private static void checkExits(Node node, List<String> exits) {
      boolean right =
          node.match(
              start -> exits.size() == 1,
              check -> exits.size() >= 2,
              outcome -> exits.isEmpty(),
              connector -> false);
      require(right, "wrong number of lines leave " + node.id());
    }

    private static Set<String> reached(String start, Map<String, List<String>> next) {
      Set<String> seen = new TreeSet<>(Set.of(start));
      Deque<String> open = new ArrayDeque<>(seen);
      while (!open.isEmpty()) {
        next.getOrDefault(open.pop(), List.of()).stream().filter(seen::add).forEach(open::push);
      }
      return seen;
    }

    /** Takes away nodes that nothing enters until none is left; a circle stays. */
    private static boolean acyclic(Map<String, List<String>> next) {
      Map<String, List<String>> rest = new TreeMap<>(next);
      boolean shrunk = true;
      while (shrunk) {
        Set<String> entered =
            rest.values().stream().flatMap(List::stream).collect(Collectors.toSet());
        shrunk = rest.keySet().retainAll(entered);
      }
      return rest.isEmpty();
    }

    private static void require(boolean holds, String otherwise) {
      if (!holds) {
        throw new IllegalArgumentException(otherwise);
      }
    }
  }
}
