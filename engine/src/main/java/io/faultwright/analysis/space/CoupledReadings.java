package io.faultwright.analysis.space;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which readings hang together because some are computed from others. */
final class CoupledReadings {
  private CoupledReadings() {}

  /** Some readings with everything they are computed from. */
  static SortedSet<String> withOperands(KnowledgeBase knowledge, Collection<String> readings) {
    SortedSet<String> all = new TreeSet<>(readings);
    for (String reading : readings) {
      Set<String> operands = knowledge.readings().get(reading).operands();
      all.addAll(operands.isEmpty() ? operands : withOperands(knowledge, operands));
    }
    return all;
  }

  /**
   * The groups within which values depend on each other.
   *
   * @param readings the readings of a space
   * @param judged those among them whose place against their limits matters
   */
  static List<SortedSet<String>> groups(
      KnowledgeBase knowledge, SortedSet<String> readings, Set<String> judged) {
    List<SortedSet<String>> groups = new ArrayList<>();
    for (String reading : readings) {
      Reading definition = knowledge.readings().get(reading);
      if (definition.derived().isPresent()) {
        join(groups, withDrivers(knowledge, withOperands(knowledge, Set.of(reading)), judged));
      }
    }
    return groups;
  }

  /** With what the limits of each follow: where a value is tied, so is the limit it is held to. */
  private static SortedSet<String> withDrivers(
      KnowledgeBase knowledge, SortedSet<String> readings, Set<String> judged) {
    SortedSet<String> all = new TreeSet<>(readings);
    readings.stream()
        .filter(judged::contains)
        .map(knowledge.limits()::get)
        .map(LimitsTable::drivers)
        .forEach(drivers -> all.addAll(withOperands(knowledge, drivers)));
    return all.equals(readings) ? all : withDrivers(knowledge, all, judged);
  }

  /** Adds a group; what shares a reading with it becomes part of it. */
  private static void join(List<SortedSet<String>> groups, SortedSet<String> group) {
    SortedSet<String> joined = new TreeSet<>(group);
    groups.stream()
        .filter(other -> other.stream().anyMatch(group::contains))
        .forEach(joined::addAll);
    groups.removeIf(joined::containsAll);
    groups.add(joined);
  }
}
