package io.faultwright.page;

import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.operation.Program;
import io.faultwright.page.SequenceSection.TimeRow;
import io.faultwright.page.SequenceSection.TimesTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** How long things last on which machines, and how often they may come. */
final class TimesTables {
  private static final int MOST_COLUMNS = 5;

  private final Desk desk;
  private final Sequence sequence;
  private final SequenceBuilds builds;

  /** A row before its values are known. */
  private record Wanted(TimeRow row, Function<Program, String> value) {}

  TimesTables(Desk desk, Sequence sequence, SequenceBuilds builds) {
    this.desk = desk;
    this.sequence = sequence;
    this.builds = builds;
  }

  /** None where nothing is timed or counted; several where one would be too wide. */
  List<TimesTable> all() {
    List<Wanted> wanted = new ArrayList<>();
    sequence.times().forEach(one -> wanted.add(time(one)));
    sequence.timers().forEach(one -> wanted.add(timer(one)));
    sequence.counters().stream()
        .filter(one -> one.go().isPresent())
        .map(this::counter)
        .forEach(wanted::add);
    if (wanted.isEmpty()) {
      return List.of();
    }
    Map<List<String>, List<Program>> columns =
        SequenceBuilds.alike(
            builds.all(), one -> wanted.stream().map(row -> row.value().apply(one)).toList());
    return Parts.of(List.copyOf(columns.keySet()), MOST_COLUMNS).stream()
        .map(some -> table(wanted, some, columns))
        .toList();
  }

  private TimesTable table(
      List<Wanted> wanted, List<List<String>> some, Map<List<String>, List<Program>> columns) {
    List<TimeRow> rows = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      int number = i;
      TimeRow row = wanted.get(i).row();
      rows.add(
          new TimeRow(
              row.title(),
              row.note(),
              some.stream().map(column -> column.get(number)).toList(),
              row.range(),
              row.reading()));
    }
    return new TimesTable(
        some.stream().map(columns::get).map(builds::words).toList(),
        rows.stream().anyMatch(row -> !row.range().isEmpty()),
        rows.stream().anyMatch(row -> row.reading().isPresent()),
        rows);
  }

  private Wanted time(Time time) {
    String range = range(time);
    Optional<Link> reading =
        time.reading().filter(desk.kb().readings()::containsKey).map(desk.links()::reading);
    return new Wanted(
        new TimeRow(time.title(), "", List.of(), range, reading),
        program -> span(program.seconds(time)));
  }

  /** Within what it can be set; empty where it cannot. */
  String range(Time time) {
    return time.setting()
        .map(
            stretch ->
                desk.say(
                    "{0} to {1}",
                    builds.times().span(stretch.low()), builds.times().span(stretch.high())))
        .orElse("");
  }

  private String span(Optional<BigFraction> seconds) {
    return seconds.map(builds.times()::span).orElse("–");
  }

  private Wanted timer(Timer timer) {
    return new Wanted(
        new TimeRow(timer.title(), phases(timer), List.of(), "", Optional.empty()),
        program -> span(builds.seconds(program, timer.lasts())));
  }

  /** The phases through which it runs. */
  String phases(Timer timer) {
    String phases =
        timer.during().stream()
            .map(sequence::phase)
            .sorted(Comparator.comparing(sequence.phases()::indexOf))
            .map(Sequence.Phase::title)
            .collect(Collectors.joining(", "));
    return desk.say("runs through {0}", phases);
  }

  private Wanted counter(Counter counter) {
    String go = sequence.phase(counter.go().orElseThrow()).title();
    return new Wanted(
        new TimeRow(
            counter.title(), desk.say("then follows {0}", go), List.of(), "", Optional.empty()),
        program ->
            SequenceBuilds.value(program, counter.limit())
                .map(limit -> desk.say("{0} times", limit.getNumerator().toString()))
                .orElse("–"));
  }
}
