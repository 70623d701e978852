package io.faultwright.compile;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.model.Version;
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
