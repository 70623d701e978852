package io.faultwright.analysis.space;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Sorted;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which readings hang together because some are computed from others. */
final class CoupledReadings {
  private final KnowledgeBase knowledge;
  private final Set<String> judged;
  private final List<SortedSet<String>> cores = new ArrayList<>();

  private CoupledReadings(KnowledgeBase knowledge, Set<String> judged) {
    this.knowledge = knowledge;
    this.judged = judged;
  }

  /**
   * Readings that depend on each other.
   *
   * @param core all but the separator
   * @param separator the one reading that does no more to the group than drive its limits, where
   *     there is just one such; its axis is cut so that within a cell the others do not depend on
   *     where exactly it lies, and so not on other groups that it drives
   */
  record Group(SortedSet<String> core, Optional<String> separator) {
    Group {
      core = Sorted.set(core);
    }

    SortedSet<String> readings() {
      SortedSet<String> all = new TreeSet<>(core);
      separator.ifPresent(all::add);
      return all;
    }
  }

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
   * The groups of a space; a reading stands in several only as their separator.
   *
   * @param readings the readings of the space
   * @param judged those among them whose place against their limits matters
   */
  static List<Group> groups(
      KnowledgeBase knowledge, SortedSet<String> readings, Set<String> judged) {
    CoupledReadings coupled = new CoupledReadings(knowledge, judged);
    readings.stream()
        .filter(reading -> knowledge.readings().get(reading).derived().isPresent())
        .forEach(reading -> join(coupled.cores, withOperands(knowledge, Set.of(reading))));
    judged.stream()
        .map(knowledge.limits()::get)
        .filter(LimitsTable::slopesBothWays)
        .forEach(table -> join(coupled.cores, coupled.withDrivers(table)));
    coupled.tieDrivers();
    return coupled.withSeparators();
  }

  /** A reading with the two that its limits slope along, and all they are computed from. */
  private SortedSet<String> withDrivers(LimitsTable table) {
    SortedSet<String> all = new TreeSet<>(table.drivers());
    all.add(table.reading());
    return withOperands(knowledge, all);
  }

  /** Adds a set; what shares a reading with it becomes part of it. */
  private static void join(List<SortedSet<String>> sets, Set<String> added) {
    SortedSet<String> joined = new TreeSet<>(added);
    sets.stream().filter(set -> set.stream().anyMatch(added::contains)).forEach(joined::addAll);
    sets.removeIf(joined::containsAll);
    sets.add(joined);
  }

  /** Joins a reading with what drives its limits where that is judged or computed from itself. */
  private void tieDrivers() {
    boolean grew = true;
    while (grew) {
      grew = false;
      for (String reading : judged) {
        for (String driver : knowledge.limits().get(reading).drivers()) {
          boolean tied = isIn(reading) && (isIn(driver) || judged.contains(driver));
          if (tied && !areTogether(reading, driver)) {
            join(cores, Set.of(reading, driver));
            grew = true;
          }
        }
      }
    }
  }

  private boolean isIn(String reading) {
    return cores.stream().anyMatch(core -> core.contains(reading));
  }

  private boolean areTogether(String one, String other) {
    return cores.stream().anyMatch(core -> core.contains(one) && core.contains(other));
  }

  private List<Group> withSeparators() {
    List<Group> groups = new ArrayList<>();
    List<SortedSet<String>> wide = new ArrayList<>();
    for (SortedSet<String> core : cores) {
      SortedSet<String> drivers = driversOutside(core);
      if (drivers.isEmpty() || drivers.size() == 1 && isStraight(core)) {
        groups.add(new Group(core, drivers.stream().findFirst()));
      } else {
        drivers.addAll(core);
        join(wide, drivers);
      }
    }
    wide.forEach(all -> groups.add(new Group(all, Optional.empty())));
    return groups;
  }

  /** Whether nothing in it is read off a curve, so that its reach on a driver is known exactly. */
  private boolean isStraight(SortedSet<String> core) {
    return core.stream()
        .map(knowledge.readings()::get)
        .noneMatch(one -> one.derived().filter(form -> !form.bends().isEmpty()).isPresent());
  }

  private SortedSet<String> driversOutside(SortedSet<String> core) {
    SortedSet<String> drivers = new TreeSet<>();
    core.stream()
        .filter(judged::contains)
        .forEach(reading -> drivers.addAll(knowledge.limits().get(reading).drivers()));
    drivers.removeAll(core);
    return drivers;
  }
}
