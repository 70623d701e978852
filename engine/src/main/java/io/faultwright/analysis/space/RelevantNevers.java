package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The {@code never}s that can matter to a symptom.
 *
 * @param related its own, and those general ones that share a reading with its rules, directly or
 *     through other {@code never}s
 * @param unrelated the rest; they speak of readings that are free here, so all they can do is to
 *     exclude equipment outright
 */
record RelevantNevers(List<Never> related, List<Never> unrelated) {
  static RelevantNevers of(KnowledgeBase knowledge, Symptom symptom, Collection<Condition> asked) {
    List<Never> chosen = new ArrayList<>(symptom.nevers().values());
    if (knowledge.nevers().isEmpty()) {
      return new RelevantNevers(chosen, List.of());
    }
    Set<String> readings = new TreeSet<>();
    asked.forEach(condition -> readings.addAll(readings(knowledge, condition)));
    chosen.forEach(never -> readings.addAll(readings(knowledge, never.when())));
    List<Never> rest = new ArrayList<>(knowledge.nevers().values());
    boolean grew = true;
    while (grew) {
      grew = moveRelated(knowledge, rest, chosen, readings);
    }
    return new RelevantNevers(chosen, rest);
  }

  /** The builds on which the unrelated statements leave something possible. */
  List<Build> left(KnowledgeBase knowledge, List<Build> builds) {
    if (unrelated.isEmpty() || builds.isEmpty()) {
      return builds;
    }
    List<Condition> excluded = unrelated.stream().map(Never::when).toList();
    Space space = Space.of(knowledge, builds, List.of(), excluded);
    int possible =
        excluded.stream()
            .map(condition -> space.truth(condition).isTrue())
            .reduce(space.consistent(), space.diagrams()::minus);
    List<Cell> cells = space.axes().get(0).cells();
    return IntStream.range(0, cells.size())
        .filter(cell -> space.diagrams().child(possible, 0, cell) != Diagrams.NONE)
        .mapToObj(cells::get)
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .sorted()
        .toList();
  }

  private static boolean moveRelated(
      KnowledgeBase knowledge, List<Never> rest, List<Never> chosen, Set<String> readings) {
    boolean moved = false;
    for (Iterator<Never> each = rest.iterator(); each.hasNext(); ) {
      Never never = each.next();
      Set<String> own = readings(knowledge, never.when());
      if (own.isEmpty() || own.stream().anyMatch(readings::contains)) {
        each.remove();
        chosen.add(never);
        readings.addAll(own);
        moved = true;
      }
    }
    return moved;
  }

  /** Readings of a condition, with those its limits follow and those they are computed from. */
  private static Set<String> readings(KnowledgeBase knowledge, Condition condition) {
    Set<String> readings =
        condition
            .tests()
            .map(Condition.Test::subject)
            .filter(knowledge.readings()::containsKey)
            .collect(Collectors.toCollection(TreeSet::new));
    for (String reading : List.copyOf(readings)) {
      if (knowledge.limits().containsKey(reading)) {
        readings.addAll(knowledge.limits().get(reading).drivers());
      }
    }
    return CoupledReadings.withOperands(knowledge, readings);
  }
}
