package io.faultwright.measure;

import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What somebody says about a table.
 *
 * @param gaps boxes in which no rule holds; together all there are, some may lie on others
 * @param overlaps pairs of rules that hold in one situation, as "a b", a before b
 */
record Judgement(List<List<Part>> gaps, SortedSet<String> overlaps) {
  /** Every pair among rules that hold at once. */
  static SortedSet<String> pairs(Set<String> rules) {
    SortedSet<String> pairs = new TreeSet<>();
    SortedSet<String> sorted = new TreeSet<>(rules);
    for (String one : sorted) {
      sorted.tailSet(one + "\0").forEach(other -> pairs.add(one + " " + other));
    }
    return pairs;
  }
}
