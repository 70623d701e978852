package io.faultwright.analysis.change;

import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The readings of two revisions. A reading of one id and one nature is one reading, with the values
 * of either side; of another nature (a choice that became a quantity, another dimension) it is two.
 */
final class SharedReadings {
  private final KnowledgeBase before;
  private final KnowledgeBase after;

  SharedReadings(KnowledgeBase before, KnowledgeBase after) {
    this.before = before;
    this.after = after;
  }

  /** The shared name of a reading of the old revision; no trainer's id has a blank. */
  String ofBefore(String id) {
    return changedNature(id) ? id + SharedNames.BEFORE : id;
  }

  /** Whether both revisions use an id for readings that cannot be compared. */
  boolean changedNature(String id) {
    Reading one = before.readings().get(id);
    Reading other = after.readings().get(id);
    return one != null && other != null && !sameNature(one.domain(), other.domain());
  }

  private static boolean sameNature(Domain one, Domain other) {
    return one.match(
        mine ->
            other.match(
                theirs -> mine.unit().dimension() == theirs.unit().dimension(), choice -> false),
        mine -> other.match(measured -> false, choice -> true));
  }

  /** Every reading by its shared name; their equipment is not yet that of both sides. */
  SortedMap<String, Reading> all() {
    SortedMap<String, Reading> all = new TreeMap<>(after.readings());
    before
        .readings()
        .forEach(
            (id, reading) -> {
              boolean both = after.readings().containsKey(id) && !changedNature(id);
              all.put(ofBefore(id), both ? joined(reading, after.readings().get(id)) : reading);
            });
    return all;
  }

  private static Reading joined(Reading one, Reading other) {
    Domain domain =
        other
            .domain()
            .match(
                measured -> joined((Domain.Measured) one.domain(), measured),
                choice -> joined((Domain.Choice) one.domain(), choice));
    SortedSet<String> normal = new TreeSet<>(other.normal());
    return SharedNames.reading(other, domain, other.applies(), normal);
  }

  private static Domain joined(Domain.Measured one, Domain.Measured other) {
    Interval old = Converted.interval(one.range(), one.unit(), other.unit());
    Optional<End> low = outer(old.low(), other.range().low(), -1);
    Optional<End> high = outer(old.high(), other.range().high(), 1);
    return new Domain.Measured(other.unit(), new Interval(low, high), other.resolution());
  }

  /** The farther of two ends: the larger for sign 1, the smaller for sign -1. */
  private static Optional<End> outer(Optional<End> one, Optional<End> other, int sign) {
    return one.flatMap(
        a -> other.map(b -> a.value().compareTo(b.value()) * sign > 0 ? a : b));
  }

  private static Domain joined(Domain.Choice one, Domain.Choice other) {
    List<NamedValue> values = new ArrayList<>(other.values());
    one.values().stream()
        .filter(value -> !other.ids().contains(value.id()))
        .forEach(values::add);
    return new Domain.Choice(values, one.yesNo() && other.yesNo());
  }
}
