package io.faultwright.report;

import io.faultwright.model.FaultPair;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Pairs of faults in few lines: the fault of most pairs first, then what it stands against. */
final class FromOthers {
  private final SortedSet<FaultPair> left;

  FromOthers(Collection<FaultPair> pairs) {
    this.left = new TreeSet<>(pairs);
  }

  /** For instance {@code drier-blocked from charge-low, warm-load}; each pair once. */
  List<List<String>> lines() {
    List<List<String>> lines = new ArrayList<>();
    while (!left.isEmpty()) {
      Map.Entry<String, SortedSet<String>> most =
          others().entrySet().stream()
              .max(
                  Comparator.comparing(
                          (Map.Entry<String, SortedSet<String>> one) -> one.getValue().size())
                      .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
              .orElseThrow();
      lines.add(line(most.getKey(), most.getValue()));
      most.getValue().forEach(other -> left.remove(FaultPair.of(most.getKey(), other)));
    }
    return lines;
  }

  private Map<String, SortedSet<String>> others() {
    Map<String, SortedSet<String>> others = new TreeMap<>();
    for (FaultPair pair : left) {
      others.computeIfAbsent(pair.one(), id -> new TreeSet<>()).add(pair.other());
      others.computeIfAbsent(pair.other(), id -> new TreeSet<>()).add(pair.one());
    }
    return others;
  }

  private static List<String> line(String fault, SortedSet<String> others) {
    List<String> line = new ArrayList<>(others);
    line.set(0, fault + " from " + line.get(0));
    return line;
  }
}
