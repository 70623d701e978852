package io.faultwright.page;

import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.operation.Timeline;
import io.faultwright.operation.Timeline.Stay;
import io.faultwright.page.CourseRuns.Run;
import io.faultwright.page.SequenceSection.ShownCell;
import io.faultwright.page.SequenceSection.SideBySide;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What displays show in a course, from when to when and for how long, machines side by side. */
final class SideBySides {
  private static final int MOST_COLUMNS = 4;

  private final Desk desk;
  private final Sequence sequence;
  private final SequenceBuilds builds;

  /**
   * What tells two cells apart; times of the day do not, since they follow from what was before.
   */
  private record Seen(String shows, String phases, String lasts) {
    /** How long something lasts that is not over says only when the course is. */
    static Seen of(ShownCell cell) {
      return new Seen(
          cell.shows(),
          cell.shows().isEmpty() ? cell.phases() : "",
          cell.over() ? cell.lasts() : "");
    }
  }

  SideBySides(Desk desk, Sequence sequence, SequenceBuilds builds) {
    this.desk = desk;
    this.sequence = sequence;
    this.builds = builds;
  }

  List<SideBySide> of(List<Run> runs) {
    List<List<ShownCell>> columns =
        marked(runs.stream().map(Run::timeline).map(this::column).toList());
    return Parts.of(IntStream.range(0, runs.size()).boxed().toList(), MOST_COLUMNS).stream()
        .map(
            some ->
                new SideBySide(
                    some.stream().map(runs::get).map(run -> builds.words(run.machines())).toList(),
                    rows(some.stream().map(columns::get).toList())))
        .toList();
  }

  private static List<List<ShownCell>> rows(List<List<ShownCell>> columns) {
    int length = columns.stream().mapToInt(List::size).max().orElse(0);
    return IntStream.range(0, length)
        .mapToObj(row -> columns.stream().map(column -> column.get(row)).toList())
        .filter(row -> row.stream().anyMatch(ShownCell::isShown))
        .toList();
  }

  /** Columns of equal length, in which cells are marked that are not as most of their row. */
  private static List<List<ShownCell>> marked(List<List<ShownCell>> columns) {
    int length = columns.stream().mapToInt(List::size).max().orElse(0);
    List<List<ShownCell>> marked = new ArrayList<>();
    columns.forEach(column -> marked.add(new ArrayList<>()));
    for (int row = 0; row < length; row++) {
      List<ShownCell> cells = new ArrayList<>();
      for (List<ShownCell> column : columns) {
        cells.add(row < column.size() ? column.get(row) : ShownCell.NONE);
      }
      Optional<Seen> usual = usual(cells);
      for (int i = 0; i < cells.size(); i++) {
        ShownCell cell = cells.get(i);
        marked.get(i).add(cell.marked(cell.isShown() && !usual.equals(Optional.of(Seen.of(cell)))));
      }
    }
    return marked;
  }

  /** What more than half of them show; absent where there is no such thing. */
  private static Optional<Seen> usual(List<ShownCell> cells) {
    List<ShownCell> shown = cells.stream().filter(ShownCell::isShown).toList();
    Map<Seen, Long> counts =
        shown.stream()
            .map(Seen::of)
            .collect(
                Collectors.groupingBy(
                    Function.identity(), LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .filter(one -> 2 * one.getValue() > shown.size())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** A cell for each time that the display changes; phases that show the same are one. */
  private List<ShownCell> column(Timeline timeline) {
    List<List<Stay>> shown = new ArrayList<>();
    for (Stay stay : timeline.stays()) {
      if (stay.steps() > 0 && !shown.isEmpty() && sameDisplay(last(last(shown)), stay)) {
        last(shown).add(stay);
      } else if (stay.steps() > 0) {
        shown.add(new ArrayList<>(List.of(stay)));
      }
    }
    return shown.stream().map(stays -> cell(timeline, stays)).toList();
  }

  private static <T> T last(List<T> list) {
    return list.get(list.size() - 1);
  }

  private boolean sameDisplay(Stay one, Stay other) {
    Phase before = sequence.phase(one.phase());
    Phase after = sequence.phase(other.phase());
    return before.display().isPresent()
        && before.display().equals(after.display())
        && before.stop() == after.stop();
  }

  private ShownCell cell(Timeline timeline, List<Stay> stays) {
    List<Phase> phases = stays.stream().map(Stay::phase).distinct().map(sequence::phase).toList();
    Stay last = last(stays);
    String from = clock(timeline, stays.get(0).from());
    String span = builds.times().span(timeline.seconds(last.to() - stays.get(0).from()));
    return new ShownCell(
        phases.get(0).display().orElse(""),
        phases.stream().map(Phase::title).collect(Collectors.joining(", ")),
        phases.get(0).stop(),
        last.over()
            ? from + "\u00A0–\u00A0" + clock(timeline, last.to())
            : desk.say("from {0}", from),
        last.over() ? span : desk.say("at least {0}", span),
        last.over(),
        false);
  }

  private String clock(Timeline timeline, long step) {
    return builds.times().clock(timeline.seconds(step), timeline.seconds(timeline.end()));
  }
}
