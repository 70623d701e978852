package io.faultwright.analysis.change;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** The limits of two revisions, and how each side's tests against them are said for both. */
final class SharedLimits {
  /** How one side says a test against the limits of a shared reading. */
  interface Judgement {
    Condition of(Test test);
  }

  private final SortedMap<String, Reading> readings;
  private final List<Build> builds;
  private final SortedMap<String, LimitsTable> tables = new TreeMap<>();
  private final Map<Side, Map<String, Judgement>> judgements = new LinkedHashMap<>();

  SharedLimits(Side before, Side after, SortedMap<String, Reading> readings, List<Build> builds) {
    this.readings = readings;
    this.builds = builds;
    judgements.put(before, new TreeMap<>());
    judgements.put(after, new TreeMap<>());
    SortedMap<String, LimitsTable> old = shared(before);
    SortedMap<String, LimitsTable> current = shared(after);
    SortedSet<String> names = new TreeSet<>(old.keySet());
    names.addAll(current.keySet());
    for (String name : names) {
      Optional<LimitsTable> one = Optional.ofNullable(old.get(name));
      Optional<LimitsTable> other = Optional.ofNullable(current.get(name));
      if (one.isPresent() && other.isPresent() && !same(one.get(), other.get())) {
        judge(before, one.get());
        judge(after, other.get());
      } else {
        LimitsTable table = one.or(() -> other).orElseThrow();
        keep(before, table);
        keep(after, table);
      }
    }
  }

  /** A table without any figure. */
  static LimitsTable none(String reading) {
    return new LimitsTable(
        reading, BuildConditions.NOWHERE, List.of(), List.of(), Optional.empty(), List.of());
  }

  SortedMap<String, LimitsTable> tables() {
    return tables;
  }

  /** A side's test against limits, on a shared reading. */
  Condition said(Side side, Test test) {
    return judgements.get(side).get(test.subject()).of(test);
  }

  private void keep(Side side, LimitsTable table) {
    tables.put(table.reading(), table);
    judgements.get(side).put(table.reading(), test -> test);
  }

  /** The new table where the old one already judges the reading: it judges the reading's double. */
  private LimitsTable doubled(LimitsTable table) {
    String name = table.reading() + SharedNames.NOW;
    Reading reading = readings.get(table.reading());
    readings.put(
        name,
        SharedNames.named(
            name,
            reading,
            reading.domain(),
            reading.applies(),
            Optional.of(Derived.same(table.reading()))));
    return new LimitsTable(
        name, table.place(), table.by(), table.drivers(), table.between(), table.rows());
  }

  private void judge(Side side, LimitsTable table) {
    Map<String, Judgement> judged = judgements.get(side);
    if (StepwiseLimits.isStepwise(table, builds)) {
      StepwiseLimits steps = new StepwiseLimits(table, readings, builds);
      judged.put(table.reading(), test -> steps.condition((AgainstLimits) test.pattern()));
    } else if (tables.containsKey(table.reading())) {
      LimitsTable twin = doubled(table);
      tables.put(twin.reading(), twin);
      judged.put(table.reading(), test -> new Test(twin.reading(), test.pattern(), test.place()));
    } else {
      keep(side, table);
    }
  }

  /** A side's tables in the shared units, for the shared builds. */
  private SortedMap<String, LimitsTable> shared(Side side) {
    SortedMap<String, LimitsTable> shared = new TreeMap<>();
    side.own()
        .limits()
        .values()
        .forEach(table -> shared.put(side.name(table.reading()), shared(side, table)));
    return shared;
  }

  private LimitsTable shared(Side side, LimitsTable table) {
    return new LimitsTable(
        side.name(table.reading()),
        table.place(),
        table.by(),
        table.drivers().stream().map(side::name).toList(),
        table.between(),
        table.rows().stream().map(row -> shared(side, table, row)).toList());
  }

  private Row shared(Side side, LimitsTable table, Row row) {
    Unit from = side.unit(table.reading());
    Unit to = unit(side.name(table.reading()));
    return new Row(
        row.place(),
        BuildConditions.of(side.satisfying(row.builds())),
        IntStream.range(0, row.at().size())
            .mapToObj(i -> shared(side, table.drivers().get(i), row.at().get(i)))
            .toList(),
        row.low().map(low -> from.convert(low, to)),
        row.high().map(high -> from.convert(high, to)));
  }

  private Interval shared(Side side, String driver, Interval at) {
    return Converted.interval(at, side.unit(driver), unit(side.name(driver)));
  }

  private Unit unit(String name) {
    return ((Domain.Measured) readings.get(name).domain()).unit();
  }

  private boolean same(LimitsTable one, LimitsTable other) {
    return one.drivers().equals(other.drivers())
        && one.between().equals(other.between())
        && builds.stream().allMatch(build -> rows(one, build).equals(rows(other, build)));
  }

  private static Set<List<Object>> rows(LimitsTable table, Build build) {
    Set<List<Object>> rows = new HashSet<>();
    table.rows().stream()
        .filter(row -> build.satisfies(row.builds()))
        .forEach(row -> rows.add(List.of(row.at(), row.low(), row.high())));
    return rows;
  }
}
