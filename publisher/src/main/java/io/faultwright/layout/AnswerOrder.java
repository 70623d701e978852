package io.faultwright.layout;

import io.faultwright.flow.Edge;
import io.faultwright.flow.Flowchart;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Puts the answers of every check in an order that is the same throughout a chart: of two answers
 * that occur together more than once, the same always stands left. The chart's own order is kept
 * where it does not contradict itself; where it does, the check that is read first decides.
 */
final class AnswerOrder {
  private final Map<String, List<Edge>> ordered = new LinkedHashMap<>();

  /** For each answer those that stand right of it wherever both occur. */
  private final Map<String, Set<String>> rightOf = new HashMap<>();

  AnswerOrder(Flowchart chart) {
    read(chart, chart.start().id());
  }

  /** The lines that leave a node, from left to right. */
  List<Edge> from(String id) {
    return ordered.getOrDefault(id, List.of());
  }

  private void read(Flowchart chart, String id) {
    if (!ordered.containsKey(id)) {
      List<Edge> edges = sorted(chart.from(id));
      ordered.put(id, edges);
      edges.forEach(edge -> read(chart, edge.to()));
    }
  }

  private List<Edge> sorted(List<Edge> edges) {
    List<Edge> rest = new ArrayList<>(edges);
    List<Edge> sorted = new ArrayList<>();
    while (!rest.isEmpty()) {
      Edge next = rest.stream().filter(edge -> isLeftmost(edge, rest)).findFirst().orElseThrow();
      rest.remove(next);
      sorted.add(next);
      rest.forEach(other -> fix(next.answer(), other.answer()));
    }
    return List.copyOf(sorted);
  }

  private boolean isLeftmost(Edge edge, List<Edge> among) {
    return among.stream().noneMatch(other -> right(other.answer()).contains(edge.answer()));
  }

  private Set<String> right(String answer) {
    return Optional.ofNullable(rightOf.get(answer)).orElse(Set.of());
  }

  /**
   * Notes that one answer stands left of another, and so of all that stand right of that; there is
   * then always an answer that no other must stand left of.
   */
  private void fix(String left, String right) {
    if (left.equals(right)) {
      return;
    }
    Set<String> further = new TreeSet<>(right(right));
    further.add(right);
    rightOf.computeIfAbsent(left, none -> new TreeSet<>()).addAll(further);
    rightOf.values().stream().filter(all -> all.contains(left)).forEach(all -> all.addAll(further));
  }
}
