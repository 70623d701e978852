package io.faultwright.ambiguity;

import io.faultwright.model.FaultPair;
import io.faultwright.model.Sorted;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * The faults that a symptom can conclude, and what tells them apart two by two.
 *
 * @param symptom id
 * @param faults ids
 * @param pairs those that were asked for
 */
public record SymptomFaults(String symptom, SortedSet<String> faults, List<Distinction> pairs) {
  public SymptomFaults {
    faults = Sorted.set(faults);
    pairs = List.copyOf(pairs);
  }

  /**
   * Faults that hang together by pairs which are concluded at once somewhere; in the order of their
   * first ids.
   */
  public List<SortedSet<String>> groups() {
    List<SortedSet<String>> groups = new ArrayList<>();
    for (Distinction pair : pairs) {
      if (!pair.always()) {
        join(groups, pair.faults());
      }
    }
    groups.sort((a, b) -> a.first().compareTo(b.first()));
    return groups.stream().<SortedSet<String>>map(Sorted::set).toList();
  }

  private static void join(List<SortedSet<String>> groups, FaultPair pair) {
    SortedSet<String> joined = new TreeSet<>(List.of(pair.one(), pair.other()));
    for (SortedSet<String> group : List.copyOf(groups)) {
      if (group.contains(pair.one()) || group.contains(pair.other())) {
        joined.addAll(group);
        groups.remove(group);
      }
    }
    groups.add(joined);
  }

  /** The same with every pair changed. */
  public SymptomFaults with(UnaryOperator<Distinction> change) {
    return new SymptomFaults(symptom, faults, pairs.stream().map(change).toList());
  }
}
