package io.faultwright.analysis.change;

import io.faultwright.model.Access;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two revisions over one set of situations: the equipment both publish, the readings of both. What
 * a revision says is then a condition on these situations, and two conditions can be compared.
 */
public final class Joined {
  private final Side before;
  private final Side after;
  private final List<Build> builds;
  private final SortedMap<String, Reading> readings;
  private final SharedLimits limits;
  private final KnowledgeBase knowledge;

  public Joined(KnowledgeBase old, KnowledgeBase current) {
    Equipment equipment = SharedEquipment.of(old.equipment(), current.equipment());
    SharedReadings shared = new SharedReadings(old, current);
    this.before = Side.before(old, shared, equipment);
    this.after = Side.after(current, equipment);
    this.builds = equipment.builds();
    this.readings = shared.all();
    for (String name : List.copyOf(readings.keySet())) {
      settleEquipment(name);
    }
    readings.put(SharedNames.NO_FIGURE, noFigure());
    this.limits = new SharedLimits(before, after, readings, builds);
    this.knowledge = knowledge(equipment, current);
  }

  private Optional<String> id(Side side, String name) {
    return side.own().readings().keySet().stream()
        .filter(id -> side.name(id).equals(name))
        .findFirst();
  }

  /** A shared reading exists where either side has it; an aid says where one side lacks it. */
  private void settleEquipment(String name) {
    Set<Build> either = new LinkedHashSet<>();
    for (Side side : List.of(before, after)) {
      id(side, name).ifPresent(id -> either.addAll(side.having(id)));
    }
    for (Side side : List.of(before, after)) {
      id(side, name)
          .filter(id -> side.having(id).size() < either.size())
          .ifPresent(id -> addExistence(side, name, side.having(id)));
    }
    readings.put(name, on(name, readings.get(name).domain(), either));
  }

  private void addExistence(Side side, String name, List<Build> having) {
    String aid = side.existence(name);
    readings.put(aid, SharedNames.existence(aid, readings.get(name), BuildConditions.of(having)));
  }

  private Reading on(String name, Domain domain, Set<Build> having) {
    Condition applies =
        having.size() == builds.size() ? Condition.ALWAYS : BuildConditions.of(having);
    Reading like = readings.get(name);
    return SharedNames.named(name, like, domain, applies, like.derived());
  }

  private static Reading noFigure() {
    Interval range = Interval.closed(BigFraction.ZERO, BigFraction.ONE);
    return new Reading(
        SharedNames.NO_FIGURE,
        BuildConditions.NOWHERE,
        "",
        "",
        new Domain.Measured(Units.find("times").orElseThrow(), range, Optional.empty()),
        Access.OUTSIDE,
        BigFraction.ONE,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new TreeSet<>(),
        Optional.empty(),
        Condition.ALWAYS,
        new TreeSet<>(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new TreeSet<>());
  }

  private KnowledgeBase knowledge(Equipment equipment, KnowledgeBase current) {
    var tables = new TreeMap<>(limits.tables());
    tables.put(SharedNames.NO_FIGURE, SharedLimits.none(SharedNames.NO_FIGURE));
    return new KnowledgeBase(
        current.handbook(),
        equipment,
        readings,
        tables,
        current.faults(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        current.cautions(),
        current.parts(),
        new TreeMap<>(),
        current.setUps(),
        current.charts(),
        current.sequences(),
        current.wordbook());
  }

  /** Shared equipment, the readings and limits of both; no symptoms. */
  public KnowledgeBase knowledge() {
    return knowledge;
  }

  List<Build> builds() {
    return builds;
  }

  Side before() {
    return before;
  }

  Side after() {
    return after;
  }

  SharedLimits limits() {
    return limits;
  }

  /** Readings that both revisions have under one id but cannot be compared. */
  public List<String> incomparable() {
    List<String> found = new ArrayList<>();
    before.own().readings().keySet().stream()
        .filter(id -> !before.name(id).equals(id))
        .forEach(found::add);
    return found;
  }
}
