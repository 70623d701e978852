package io.faultwright.analysis.operation;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Row;
import io.faultwright.operation.Program;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Finds builds that have no value, or two, for a time or for the limit of a counter. */
final class UnclearTimes {
  private final Sequence sequence;
  private final List<Build> builds;
  private final List<Explored> explored;

  private UnclearTimes(Sequence sequence, List<Build> builds, List<Explored> explored) {
    this.sequence = sequence;
    this.builds = builds;
    this.explored = explored;
  }

  static List<Finding> findings(Sequence sequence, List<Build> builds, List<Explored> explored) {
    UnclearTimes unclear = new UnclearTimes(sequence, builds, explored);
    return Stream.concat(
            sequence.times().stream()
                .flatMap(time -> unclear.of(time.id(), time.place(), time.rows()).stream()),
            sequence.counters().stream()
                .filter(counter -> !counter.limit().isEmpty())
                .flatMap(
                    counter -> unclear.of(counter.id(), counter.place(), counter.limit()).stream()))
        .toList();
  }

  private List<Finding> of(String id, Place place, List<Row> rows) {
    List<Finding> findings = new ArrayList<>();
    first(build -> fitting(build, rows).isEmpty())
        .ifPresent(build -> findings.add(missing(id, place, build, rows)));
    first(build -> fitting(build, rows).stream().map(Row::value).distinct().count() > 1)
        .ifPresent(build -> findings.add(doubled(id, build, fitting(build, rows))));
    return findings;
  }

  private Optional<Build> first(Predicate<Build> wanted) {
    return builds.stream().filter(wanted).findFirst();
  }

  private List<Row> fitting(Build build, List<Row> rows) {
    return Program.of(sequence, build).fitting(rows);
  }

  private Finding missing(String id, Place place, Build build, List<Row> rows) {
    long many = builds.stream().filter(one -> fitting(one, rows).isEmpty()).count();
    String more = many > 1 ? " and " + (many - 1) + " more" : "";
    return shown(
        Finding.of(
            FindingKind.TIME_UNCLEAR,
            place,
            "`" + id + "` of `" + sequence.id() + "` has no value for `" + build + "`" + more,
            "add a value that applies to it"),
        id,
        build);
  }

  private Finding doubled(String id, Build build, List<Row> rows) {
    return shown(
        Finding.of(
            FindingKind.TIME_UNCLEAR,
            rows.stream().map(Row::place).toList(),
            "`" + id + "` of `" + sequence.id() + "` has more than one value for `" + build + "`",
            "let only one of these values apply to it"),
        id,
        build);
  }

  /** With the shortest way to the phase that needs the time, on that build. */
  private Finding shown(Finding finding, String id, Build build) {
    List<Object> behaviour = Program.of(sequence, build).behaviour();
    return explored.stream()
        .filter(one -> one.program().behaviour().equals(behaviour))
        .findFirst()
        .flatMap(one -> needing(one, id))
        .map(course -> finding.shownBy(Told.build(build), course))
        .orElse(finding);
  }

  private Optional<EventCourse> needing(Explored explored, String id) {
    return explored.phases().entrySet().stream()
        .filter(reached -> needs(reached.getKey(), id))
        .min(Comparator.comparingInt(reached -> reached.getValue().events()))
        .map(reached -> Told.course(explored.program(), reached.getValue()));
  }

  private boolean needs(String phase, String id) {
    boolean lines = sequence.phase(phase).next().stream().anyMatch(line -> needs(line, id));
    boolean outputs =
        sequence.phase(phase).on().stream()
            .flatMap(on -> Stream.concat(on.from().stream(), on.until().stream()))
            .anyMatch(lasting -> lasting.time().filter(id::equals).isPresent());
    return lines || outputs;
  }

  private boolean needs(Sequence.Transition line, String id) {
    return line.count().contains(id)
        || line.after().stream()
            .flatMap(after -> after.lasting().or(() -> lasting(after)).stream())
            .anyMatch(lasting -> lasting.time().filter(id::equals).isPresent());
  }

  private Optional<Sequence.Lasting> lasting(Sequence.After after) {
    return sequence.timers().stream()
        .filter(timer -> after.timer().filter(timer.id()::equals).isPresent())
        .map(Sequence.Timer::lasts)
        .findFirst();
  }
}
