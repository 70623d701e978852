package io.faultwright.analysis.change;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** A limits table whose figures do not slope: a test against it is one against plain numbers. */
final class StepwiseLimits {
  /** Limits over a stretch of each driver, or wherever they lie. */
  private record Piece(List<Interval> drivers, Optional<Band> band) {}

  private final LimitsTable table;
  private final SortedMap<String, Reading> readings;
  private final Map<List<Piece>, List<Build>> groups = new LinkedHashMap<>();

  StepwiseLimits(LimitsTable table, SortedMap<String, Reading> readings, List<Build> builds) {
    this.table = table;
    this.readings = readings;
    builds.forEach(
        build -> groups.computeIfAbsent(pieces(build), p -> new ArrayList<>()).add(build));
  }

  static boolean isStepwise(LimitsTable table, List<Build> builds) {
    return table.drivers().isEmpty()
        || table.between().equals(Optional.of(Between.STEP))
        || builds.stream().noneMatch(build -> Limits.of(table, build).followsDrivers());
  }

  private List<Piece> pieces(Build build) {
    Limits limits = Limits.of(table, build);
    if (!limits.followsDrivers()) {
      return List.of(new Piece(List.of(), limits.at(List.of())));
    }
    return boxes(0)
        .map(box -> new Piece(box, limits.at(box.stream().map(StepwiseLimits::inside).toList())))
        .toList();
  }

  /** A stretch of each driver from this one on, in every combination. */
  private Stream<List<Interval>> boxes(int driver) {
    if (driver == table.drivers().size()) {
      return Stream.of(List.of());
    }
    return stretches(driver).stream()
        .flatMap(
            stretch ->
                boxes(driver + 1)
                    .map(rest -> Stream.concat(Stream.of(stretch), rest.stream()).toList()));
  }

  private static BigFraction inside(Interval stretch) {
    return ends(stretch).reduce(BigFraction::add).orElseThrow().divide(2);
  }

  private static Stream<BigFraction> ends(Interval interval) {
    return Stream.of(interval.low(), interval.high()).map(end -> end.orElseThrow().value());
  }

  /** A driver's range as single values at the ends of rows, and what lies between them. */
  private List<Interval> stretches(int driver) {
    Interval range = range(table.drivers().get(driver));
    SortedSet<BigFraction> marks = new TreeSet<>(BigFraction::compareTo);
    ends(range).forEach(marks::add);
    table.rows().stream()
        .flatMap(row -> row.at().stream().skip(driver).limit(1))
        .flatMap(StepwiseLimits::ends)
        .filter(range::contains)
        .forEach(marks::add);
    List<Interval> stretches = new ArrayList<>();
    Optional<BigFraction> last = Optional.empty();
    for (BigFraction mark : marks) {
      last.ifPresent(from -> stretches.add(between(from, mark)));
      stretches.add(Interval.point(mark));
      last = Optional.of(mark);
    }
    return stretches;
  }

  private static Interval between(BigFraction low, BigFraction high) {
    return new Interval(Optional.of(new End(low, false)), Optional.of(new End(high, false)));
  }

  private Interval range(String reading) {
    return ((Domain.Measured) readings.get(reading).domain()).range();
  }

  /** A test against the limits as tests of equipment, drivers and value. */
  Condition condition(AgainstLimits wanted) {
    List<Condition> parts = new ArrayList<>();
    groups.forEach(
        (pieces, builds) -> pieces.forEach(piece -> parts.addAll(parts(builds, piece, wanted))));
    Condition judged = Kleene.where(taken(table.reading()), new Condition.Any(parts));
    for (String driver : table.drivers()) {
      judged = Kleene.where(taken(driver), judged);
    }
    return judged;
  }

  private List<Condition> parts(List<Build> builds, Piece piece, AgainstLimits wanted) {
    List<Condition> where = new ArrayList<>(List.of(BuildConditions.of(builds)));
    for (int i = 0; i < piece.drivers().size(); i++) {
      where.add(in(table.drivers().get(i), piece.drivers().get(i)));
    }
    return values(piece, wanted).stream()
        .<Condition>map(
            value -> {
              List<Condition> all = new ArrayList<>(where);
              all.add(value);
              return new Condition.All(all);
            })
        .toList();
  }

  private List<Condition> values(Piece piece, AgainstLimits wanted) {
    if (piece.band().isEmpty()) {
      return List.of(noFigure());
    }
    Band band = piece.band().get();
    return wanted.sides().stream()
        .flatMap(side -> band.values(side).stream())
        .map(values -> in(table.reading(), values))
        .toList();
  }

  private static Condition noFigure() {
    return new Test(
        SharedNames.NO_FIGURE, new AgainstLimits(EnumSet.of(Side.WITHIN)), BuildConditions.NOWHERE);
  }

  /** True wherever the reading was taken. */
  private Condition taken(String reading) {
    return in(reading, range(reading));
  }

  private static Condition in(String reading, Interval interval) {
    return new Test(reading, new InInterval(interval), BuildConditions.NOWHERE);
  }
}
