package io.faultwright.analysis.change;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** One of the two revisions, seen from the equipment and the names that both share. */
final class Side {
  private final KnowledgeBase own;
  private final String existence;
  private final UnaryOperator<String> names;
  private final Map<Build, Build> builds = new LinkedHashMap<>();

  private Side(KnowledgeBase own, String existence, UnaryOperator<String> names, Equipment shared) {
    this.own = own;
    this.existence = existence;
    this.names = names;
    shared
        .builds()
        .forEach(
            build -> builds.put(build, SharedEquipment.same(build, own.equipment()).orElseThrow()));
  }

  static Side before(KnowledgeBase own, SharedReadings readings, Equipment shared) {
    return new Side(own, SharedNames.EXISTS_BEFORE, readings::ofBefore, shared);
  }

  static Side after(KnowledgeBase own, Equipment shared) {
    return new Side(own, SharedNames.EXISTS_AFTER, id -> id, shared);
  }

  KnowledgeBase own() {
    return own;
  }

  /** The shared name of one of its readings. */
  String name(String reading) {
    return names.apply(reading);
  }

  /** The name of the aid that exists exactly where the reading of a shared name does. */
  String existence(String name) {
    return existence + name;
  }

  /** The shared builds, as the other side sees them, that satisfy a condition on equipment. */
  List<Build> satisfying(Condition condition) {
    return builds.entrySet().stream()
        .filter(build -> build.getValue().satisfies(condition))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The shared builds that have one of its readings. */
  List<Build> having(String reading) {
    return satisfying(own.readings().get(reading).applies());
  }

  /** What it calls a shared build. */
  Build own(Build shared) {
    return builds.get(shared);
  }

  boolean hasReading(String reading) {
    return own.readings().containsKey(reading);
  }

  /** The unit in which it gives a quantity. */
  Unit unit(String reading) {
    return ((Domain.Measured) own.readings().get(reading).domain()).unit();
  }
}
