package io.faultwright.model;

import static io.faultwright.model.Conditions.NOWHERE;

import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds limits tables for tests; {@code -} stands for an end that is left out. */
public final class LimitsTableBuilder {
  private final String reading;
  private final List<String> facts;
  private final List<String> drivers;
  private final Optional<Between> between;
  private final List<Row> rows = new ArrayList<>();

  private LimitsTableBuilder(
      String reading, List<String> facts, List<String> drivers, Optional<Between> between) {
    this.reading = reading;
    this.facts = facts;
    this.drivers = drivers;
    this.between = between;
  }

  public static LimitsTableBuilder fixed(String reading, String... facts) {
    return new LimitsTableBuilder(reading, List.of(facts), List.of(), Optional.empty());
  }

  public static LimitsTableBuilder interpolated(String reading, String driver, String... facts) {
    return new LimitsTableBuilder(
        reading, List.of(facts), List.of(driver), Optional.of(Between.INTERPOLATE));
  }

  public static LimitsTableBuilder sloping(String reading, String driver, String other) {
    return new LimitsTableBuilder(
        reading, List.of("family"), List.of(driver, other), Optional.of(Between.INTERPOLATE));
  }

  public static LimitsTableBuilder stepped(String reading, String driver, String... facts) {
    return new LimitsTableBuilder(
        reading, List.of(facts), List.of(driver), Optional.of(Between.STEP));
  }

  public LimitsTableBuilder row(Condition builds, String low, String high) {
    return row(builds, List.of(), low, high);
  }

  public LimitsTableBuilder at(Condition builds, String point, String low, String high) {
    return row(builds, List.of(Interval.point(Decimals.parse(point))), low, high);
  }

  public LimitsTableBuilder at(
      Condition builds, String point, String other, String low, String high) {
    return row(
        builds,
        List.of(Interval.point(Decimals.parse(point)), Interval.point(Decimals.parse(other))),
        low,
        high);
  }

  public LimitsTableBuilder over(
      Condition builds, String from, String to, String low, String high) {
    Interval stretch = Interval.closed(Decimals.parse(from), Decimals.parse(to));
    return row(builds, List.of(stretch), low, high);
  }

  private LimitsTableBuilder row(Condition builds, List<Interval> at, String low, String high) {
    rows.add(new Row(NOWHERE, builds, at, end(low), end(high)));
    return this;
  }

  private static Optional<BigFraction> end(String text) {
    return text.equals("-") ? Optional.empty() : Optional.of(Decimals.parse(text));
  }

  public LimitsTable build() {
    List<String> by = Stream.concat(facts.stream(), drivers.stream()).toList();
    return new LimitsTable(reading, NOWHERE, by, drivers, between, rows);
  }
}
