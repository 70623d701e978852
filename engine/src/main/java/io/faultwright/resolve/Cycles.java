package io.faultwright.resolve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Finds circles in a graph of ids. */
final class Cycles {
  private Cycles() {}

  /** Circles that have no id in common, each from its smallest id back to it. */
  static List<List<String>> of(SortedMap<String, ? extends Collection<String>> successors) {
    SortedMap<String, SortedSet<String>> left = new TreeMap<>();
    successors.forEach((id, next) -> left.put(id, new TreeSet<>(next)));
    List<List<String>> cycles = new ArrayList<>();
    prune(left);
    while (!left.isEmpty()) {
      List<String> cycle = walk(left);
      cycles.add(closed(cycle));
      cycle.forEach(left::remove);
      prune(left);
    }
    return cycles;
  }

  /** Removes every id from which no circle can be reached. */
  private static void prune(SortedMap<String, SortedSet<String>> graph) {
    Map<String, List<String>> predecessors = new HashMap<>();
    graph.forEach(
        (id, next) -> {
          next.retainAll(graph.keySet());
          next.forEach(one -> predecessors.computeIfAbsent(one, x -> new ArrayList<>()).add(id));
        });
    Deque<String> ends = new ArrayDeque<>();
    graph.forEach((id, next) -> addIfEnd(id, next, ends));
    while (!ends.isEmpty()) {
      String end = ends.pop();
      graph.remove(end);
      for (String before : predecessors.getOrDefault(end, List.of())) {
        graph.get(before).remove(end);
        addIfEnd(before, graph.get(before), ends);
      }
    }
  }

  private static void addIfEnd(String id, SortedSet<String> next, Deque<String> ends) {
    if (next.isEmpty()) {
      ends.push(id);
    }
  }

  private static List<String> walk(SortedMap<String, SortedSet<String>> graph) {
    LinkedHashSet<String> path = new LinkedHashSet<>();
    String at = graph.firstKey();
    while (path.add(at)) {
      at = graph.get(at).first();
    }
    List<String> walked = List.copyOf(path);
    return walked.subList(walked.indexOf(at), walked.size());
  }

  private static List<String> closed(List<String> cycle) {
    int smallest = cycle.indexOf(new TreeSet<>(cycle).first());
    List<String> turned = new ArrayList<>(cycle.subList(smallest, cycle.size()));
    turned.addAll(cycle.subList(0, smallest));
    turned.add(turned.get(0));
    return turned;
  }
}
