package io.faultwright.analysis.tolerance;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whether a place against limits can be one or another while readings lie in a box. */
final class BandReach {
  private final KnowledgeBase knowledge;
  private final Map<String, Limits> limits = new ConcurrentHashMap<>();

  BandReach(KnowledgeBase knowledge) {
    this.knowledge = knowledge;
  }

  private Limits limits(LimitsTable table, Build build) {
    String key = table.reading() + " " + build;
    return limits.computeIfAbsent(key, id -> Limits.of(table, build));
  }

  /** The readings that the limits of a build follow. */
  List<String> drivers(String reading, Build build) {
    LimitsTable table = knowledge.limits().get(reading);
    return limits(table, build).followsDrivers() ? table.drivers() : List.of();
  }

  /** False only where the place is the same all over the box. */
  boolean mayDiffer(String reading, Interval reach, Build build, ToleranceBox box) {
    LimitsTable table = knowledge.limits().get(reading);
    List<Interval> at = new ArrayList<>();
    for (String driver : drivers(reading, build)) {
      if (box.mayLeaveCurves(driver, build)) {
        return true;
      }
      box.reach(driver, build).ifPresent(at::add);
    }
    return at.size() == drivers(reading, build).size() && differs(reach, bands(table, build, at));
  }

  /**
   * The limits over a part of the table: at its ends and at every row inside, for bends are there;
   * along two drivers at the points around it, between which all others lie.
   */
  private List<Optional<Band>> bands(LimitsTable table, Build build, List<Interval> at) {
    Limits here = limits(table, build);
    List<Row> rows = table.rows().stream().filter(row -> build.satisfies(row.builds())).toList();
    List<Optional<Band>> bands = new ArrayList<>();
    List<List<BigFraction>> points = List.of(List.of());
    for (int driver = 0; driver < at.size(); driver++) {
      SortedSet<BigFraction> ends = ends(rows, driver);
      if (isStepped(table)
          && !ToleranceBox.isPoint(at.get(driver))
          && ends.stream().anyMatch(at.get(driver)::contains)) {
        bands.add(Optional.empty());
      }
      points = product(points, around(at.get(driver), ends, table.slopesBothWays()));
    }
    points.forEach(point -> bands.add(here.at(point)));
    return bands;
  }

  private static boolean isStepped(LimitsTable table) {
    return table.between().equals(Optional.of(Between.STEP));
  }

  private static SortedSet<BigFraction> ends(List<Row> rows, int driver) {
    SortedSet<BigFraction> ends = new TreeSet<>(BigFraction::compareTo);
    rows.stream()
        .flatMap(row -> row.at().stream().skip(driver).limit(1))
        .flatMap(stretch -> Stream.of(stretch.low(), stretch.high()).flatMap(Optional::stream))
        .forEach(end -> ends.add(end.value()));
    return ends;
  }

  private static SortedSet<BigFraction> around(
      Interval at, SortedSet<BigFraction> ends, boolean wider) {
    BigFraction low = ToleranceBox.low(at);
    BigFraction high = ToleranceBox.high(at);
    SortedSet<BigFraction> points = new TreeSet<>(ends.subSet(low, high));
    points.add(low);
    points.add(high);
    if (wider) {
      points.addAll(
          ends.headSet(low).stream().skip(Math.max(0, ends.headSet(low).size() - 1)).toList());
      points.addAll(ends.tailSet(high).stream().limit(1).toList());
    }
    return points;
  }

  private static List<List<BigFraction>> product(
      List<List<BigFraction>> points, Collection<BigFraction> further) {
    return points.stream()
        .flatMap(
            point ->
                further.stream()
                    .map(next -> Stream.concat(point.stream(), Stream.of(next)).toList()))
        .toList();
  }

  /** Without a figure all along, the place is unknown all along. */
  private static boolean differs(Interval reach, List<Optional<Band>> bands) {
    return bands.stream().anyMatch(Optional::isPresent)
        && (bands.stream().anyMatch(Optional::isEmpty)
            || passes(reach, bands, Band::low)
            || passes(reach, bands, Band::high));
  }

  /** Whether an end of the limits may lie inside of the reach, or exists only here and there. */
  private static boolean passes(
      Interval reach, List<Optional<Band>> bands, Function<Band, Optional<BigFraction>> end) {
    List<BigFraction> ends =
        bands.stream().flatMap(Optional::stream).flatMap(band -> end.apply(band).stream()).toList();
    if (ends.size() < bands.size()) {
      return !ends.isEmpty();
    }
    BigFraction lowest = ends.stream().min(BigFraction::compareTo).orElseThrow();
    BigFraction highest = ends.stream().max(BigFraction::compareTo).orElseThrow();
    boolean always = ToleranceBox.low(reach).compareTo(highest) > 0;
    boolean never = ToleranceBox.high(reach).compareTo(lowest) < 0;
    boolean exactly = ToleranceBox.isPoint(reach) && lowest.equals(highest);
    return !always && !never && !exactly;
  }
}
