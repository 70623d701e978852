package io.faultwright.analysis.operation;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Line;
import io.faultwright.operation.Lit;
import io.faultwright.operation.Program;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
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
    List<Build> missing = needing(id, build -> fitting(build, rows).isEmpty());
    if (!missing.isEmpty()) {
      findings.add(missing(id, place, missing));
    }
    needing(id, build -> fitting(build, rows).stream().map(Row::value).distinct().count() > 1)
        .stream()
        .findFirst()
        .ifPresent(build -> findings.add(doubled(id, build, fitting(build, rows))));
    return findings;
  }

  /** Builds that come to where the value is needed; all of them where nothing needs it. */
  private List<Build> needing(String id, Predicate<Build> wanted) {
    boolean idle =
        sequence.phases().stream()
            .noneMatch(phase -> needs(phase.next().stream(), phase.on().stream(), id));
    return builds.stream()
        .filter(wanted)
        .filter(
            build -> idle || explored(build).filter(one -> !reached(one, id).isEmpty()).isPresent())
        .toList();
  }

  private Optional<Explored> explored(Build build) {
    List<Object> behaviour = Program.of(sequence, build).behaviour();
    return explored.stream().filter(one -> one.program().behaviour().equals(behaviour)).findFirst();
  }

  /** The ways into the phases that need the value. */
  private List<Reach> reached(Explored explored, String id) {
    Program program = explored.program();
    return explored.phases().entrySet().stream()
        .filter(
            entry -> {
              int phase = program.phase(entry.getKey());
              return needs(
                  Arrays.stream(program.lines(phase)).map(Line::source),
                  Arrays.stream(program.lit(phase)).map(Lit::source),
                  id);
            })
        .map(Map.Entry::getValue)
        .toList();
  }

  private List<Row> fitting(Build build, List<Row> rows) {
    return Program.of(sequence, build).fitting(rows);
  }

  private Finding missing(String id, Place place, List<Build> missing) {
    Build build = missing.get(0);
    String more = missing.size() > 1 ? " and " + (missing.size() - 1) + " more" : "";
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
    return explored(build)
        .flatMap(
            one ->
                reached(one, id).stream()
                    .reduce((way, other) -> other.isShorterThan(way) ? other : way)
                    .map(reach -> Told.course(one.program(), reach)))
        .map(course -> finding.shownBy(Told.build(build), course))
        .orElse(finding);
  }

  private boolean needs(Stream<Transition> lines, Stream<Energised> on, String id) {
    return lines.anyMatch(line -> needs(line, id))
        || on.flatMap(one -> Stream.concat(one.from().stream(), one.until().stream()))
            .anyMatch(lasting -> lasting.time().filter(id::equals).isPresent());
  }

  private boolean needs(Transition line, String id) {
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
