package io.faultwright.compile;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.model.Version;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** The limits tables of a knowledge base, each cut down to a build when first asked for. */
public final class LimitsBook {
  /** Texts alone: their hash is kept, a build's would be computed anew each time. */
  private record Key(String reading, String model, String software) {
    static Key of(String reading, Build build) {
      return new Key(reading, build.model().id(), build.software().map(Version::text).orElse(""));
    }
  }

  private final Map<String, LimitsTable> tables;
  private final Map<Key, Limits> limits = new ConcurrentHashMap<>();
  private final Map<Build, Map<String, Optional<Judge>>> judges =
      Collections.synchronizedMap(new IdentityHashMap<>());

  /** A table with what is worked out beforehand for one build. */
  private record Judge(LimitsTable table, Optional<StraightLimits> straight) {}

  LimitsBook(KnowledgeBase base) {
    this.tables = base.limits();
  }

  public Optional<LimitsTable> table(String reading) {
    return Optional.ofNullable(tables.get(reading));
  }

  /** The band of a reading on a build; absent without a row or without the drivers' values. */
  public Optional<Band> band(String reading, Build build, Situation situation) {
    return table(reading).flatMap(table -> limits(table, build).at(drivers(table, situation)));
  }

  /** Where a value lies against the limits of its reading; absent where they are not known. */
  Optional<Side> side(String reading, Build build, BigFraction value, Situation situation) {
    Optional<Judge> judge = judge(reading, build);
    if (judge.isEmpty()) {
      return Optional.empty();
    }
    List<BigFraction> drivers = drivers(judge.get().table(), situation);
    Optional<Side> quick =
        judge.get().straight().isEmpty() || drivers.isEmpty()
            ? Optional.empty()
            : judge.get().straight().get().side(value, drivers.get(0));
    return quick.isPresent()
        ? quick
        : limits(judge.get().table(), build).at(drivers).map(band -> band.side(value));
  }

  private Optional<Judge> judge(String reading, Build build) {
    Map<String, Optional<Judge>> ofBuild = judges.get(build);
    if (ofBuild == null) {
      ofBuild = judges.computeIfAbsent(build, key -> new ConcurrentHashMap<>());
    }
    Optional<Judge> known = ofBuild.get(reading);
    return known != null
        ? known
        : ofBuild.computeIfAbsent(
            reading,
            id -> table(id).map(table -> new Judge(table, StraightLimits.of(table, build))));
  }

  /** Whether the band of a reading on a build depends on other readings. */
  public boolean followsDrivers(String reading, Build build) {
    return table(reading).filter(table -> limits(table, build).followsDrivers()).isPresent();
  }

  /** The values of the readings that a table follows; empty unless all are given. */
  public static List<BigFraction> drivers(LimitsTable table, Situation situation) {
    List<BigFraction> values =
        table.drivers().stream()
            .map(situation.readings()::get)
            .filter(Value.Number.class::isInstance)
            .map(value -> ((Value.Number) value).amount())
            .toList();
    return values.size() == table.drivers().size() ? values : List.of();
  }

  private Limits limits(LimitsTable table, Build build) {
    return limits.computeIfAbsent(Key.of(table.reading(), build), key -> Limits.of(table, build));
  }
}
