package io.faultwright.analysis.change;

import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

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
    return one != null && other != null && !sameNature(one, other);
  }

  private boolean sameNature(Reading one, Reading other) {
    return sameKind(one.domain(), other.domain())
        && one.operands().equals(other.operands())
        && one.operands().stream().noneMatch(this::changedNature)
        && computed(one, before, other).equals(computed(other, after, other));
  }

  private static boolean sameKind(Domain one, Domain other) {
    return one.match(
        mine ->
            other.match(
                theirs -> mine.unit().dimension() == theirs.unit().dimension(), choice -> false),
        mine -> other.match(measured -> false, choice -> true));
  }

  /**
   * How a reading of one revision is computed, in the shared names and units.
   *
   * @param like a reading in the unit of the result
   */
  private Optional<Derived> computed(Reading reading, KnowledgeBase side, Reading like) {
    return reading
        .derived()
        .map(own -> computed(own, side, value -> convert(value, reading, like)));
  }

  private static BigFraction convert(BigFraction value, Reading from, Reading to) {
    return unit(from).convert(value, unit(to));
  }

  private Derived computed(Derived own, KnowledgeBase side, UnaryOperator<BigFraction> result) {
    BigFraction zero = result.apply(BigFraction.ZERO);
    BigFraction one = result.apply(BigFraction.ONE).subtract(zero);
    return own.with(id -> inSharedUnit(id, side)).times(one).plus(zero);
  }

  /** The value of a reading of one revision, by its shared name and in the shared unit. */
  private Derived.Converted inSharedUnit(String id, KnowledgeBase side) {
    Unit own = unit(side.readings().get(id));
    Unit shared = unit(name(id, side));
    BigFraction zero = shared.convert(BigFraction.ZERO, own);
    BigFraction one = shared.convert(BigFraction.ONE, own).subtract(zero);
    return new Derived.Converted(name(id, side), one, zero);
  }

  private String name(String id, KnowledgeBase side) {
    return side == before ? ofBefore(id) : id;
  }

  /** The shared unit of a quantity: that of the new revision where it has the reading. */
  private Unit unit(String name) {
    return unit(current(name));
  }

  /** The reading of a shared name, as the new revision has it where it does. */
  private Reading current(String name) {
    Reading current = after.readings().get(name);
    String id = name.endsWith(SharedNames.BEFORE) ? name.replace(SharedNames.BEFORE, "") : name;
    return current == null ? before.readings().get(id) : current;
  }

  private static Unit unit(Reading reading) {
    return ((Domain.Measured) reading.domain()).unit();
  }

  /** Every reading by its shared name; their equipment is not yet that of both sides. */
  SortedMap<String, Reading> all() {
    SortedMap<String, Reading> all = new TreeMap<>();
    after.readings().forEach((id, reading) -> all.put(id, shared(reading, after)));
    before
        .readings()
        .forEach(
            (id, reading) ->
                all.merge(ofBefore(id), shared(reading, before), SharedReadings::joined));
    return all;
  }

  private Reading shared(Reading reading, KnowledgeBase side) {
    return SharedNames.named(
        name(reading.id(), side),
        reading,
        reading.domain(),
        reading.applies(),
        computed(reading, side, current(name(reading.id(), side))));
  }

  private static Reading joined(Reading current, Reading old) {
    Domain domain =
        current
            .domain()
            .match(
                measured -> joined((Domain.Measured) old.domain(), measured),
                choice -> joined((Domain.Choice) old.domain(), choice));
    return SharedNames.named(current.id(), current, domain, current.applies(), current.derived());
  }

  private static Domain joined(Domain.Measured one, Domain.Measured other) {
    Interval old = Converted.interval(one.range(), one.unit(), other.unit());
    Optional<End> low = outer(old.low(), other.range().low(), -1);
    Optional<End> high = outer(old.high(), other.range().high(), 1);
    return new Domain.Measured(other.unit(), new Interval(low, high), other.resolution());
  }

  /** The farther of two ends: the larger for sign 1, the smaller for sign -1. */
  private static Optional<End> outer(Optional<End> one, Optional<End> other, int sign) {
    return one.flatMap(a -> other.map(b -> a.value().compareTo(b.value()) * sign > 0 ? a : b));
  }

  private static Domain joined(Domain.Choice one, Domain.Choice other) {
    List<NamedValue> values = new ArrayList<>(other.values());
    one.values().stream().filter(value -> !other.ids().contains(value.id())).forEach(values::add);
    return new Domain.Choice(values, one.yesNo() && other.yesNo());
  }
}
