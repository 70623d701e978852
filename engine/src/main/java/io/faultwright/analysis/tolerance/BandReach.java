package io.faultwright.analysis.tolerance;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    return limits(table, build).followsDriver() ? List.copyOf(table.drivers()) : List.of();
  }

  /** False only where the place is the same all over the box. */
  boolean mayDiffer(String reading, Interval reach, Build build, ToleranceBox box) {
    LimitsTable table = knowledge.limits().get(reading);
    List<String> drivers = drivers(reading, build);
    if (drivers.isEmpty()) {
      return differs(reach, List.of(limits(table, build).at(Optional.empty())));
    }
    Optional<Interval> at = box.reach(drivers.get(0));
    return at.isPresent() && differs(reach, bands(table, build, at.get()));
  }

  /** The limits at the ends of a stretch of the driver and at every row inside; bends are there. */
  private List<Optional<Band>> bands(LimitsTable table, Build build, Interval at) {
    Limits here = limits(table, build);
    List<Optional<Band>> bands = new ArrayList<>();
    if (!ToleranceBox.isPoint(at)) {
      bands.add(here.at(Optional.of(ToleranceBox.high(at))));
      table.rows().stream()
          .filter(row -> build.satisfies(row.builds()))
          .flatMap(BandReach::ends)
          .filter(at::contains)
          .forEach(
              end ->
                  bands.add(
                      table.between().equals(Optional.of(Between.STEP))
                          ? Optional.empty()
                          : here.at(Optional.of(end))));
    }
    bands.add(here.at(Optional.of(ToleranceBox.low(at))));
    return bands;
  }

  private static Stream<BigFraction> ends(Row row) {
    return row.at().stream()
        .flatMap(stretch -> Stream.of(stretch.low(), stretch.high()).flatMap(Optional::stream))
        .map(End::value);
  }

  /** Without a figure all along, the place is unknown all along. */
  private static boolean differs(Interval reach, List<Optional<Band>> bands) {
    if (bands.stream().allMatch(Optional::isEmpty)) {
      return bands.size() > 1;
    }
    return bands.stream().anyMatch(Optional::isEmpty)
        || passes(reach, bands, Band::low)
        || passes(reach, bands, Band::high);
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
