package io.faultwright.analysis.change;

import io.faultwright.change.SequenceChange.Part;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Courses;
import io.faultwright.operation.Program;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Timeline;
import io.faultwright.source.Place;
import io.faultwright.wording.EventText;
import io.faultwright.wording.Times;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a sequence of operation says for one build, part by part in the written order. */
final class SequenceFacts {
  private static final Times TIMES = Times.ENGLISH;

  /** What a fact is about. */
  record Key(Part part, String of) {}

  /**
   * A fact.
   *
   * @param written with times by their names
   * @param meant with times as seconds
   * @param place where it stands
   */
  record Fact(String written, String meant, Place place) {
    /** A time that changed is told as such, not in each phase that it ends. */
    boolean differs(Fact other) {
      return !written.equals(other.written) && !meant.equals(other.meant);
    }
  }

  private final Sequence sequence;
  private final Build build;
  private final Map<Key, Fact> facts = new LinkedHashMap<>();

  private SequenceFacts(Sequence sequence, Build build) {
    this.sequence = sequence;
    this.build = build;
  }

  static Map<Key, Fact> of(Sequence sequence, Build build) {
    SequenceFacts all = new SequenceFacts(sequence, build);
    all.times();
    sequence.phases().forEach(all::phase);
    all.put(Part.START, "", sequence.start(), sequence.place());
    all.put(Part.APART, "", all.apart(), sequence.place());
    sequence.courses().forEach(all::course);
    return all.facts;
  }

  private void put(Part part, String of, String text, Place place) {
    facts.put(new Key(part, of), new Fact(text, text, place));
  }

  private void put(Part part, String of, Function<Function<Lasting, String>, String> text) {
    Place place = sequence.phase(of).place();
    facts.put(
        new Key(part, of), new Fact(text.apply(this::written), text.apply(this::meant), place));
  }

  private void times() {
    for (Sequence.Time time : sequence.times()) {
      String range =
          time.setting().map(one -> span(one.low()) + " to " + span(one.high())).orElse("");
      put(
          Part.TIME,
          time.id(),
          value(time.rows()).map(SequenceFacts::span).orElse(""),
          time.place());
      put(Part.SETTING, time.id(), range, time.place());
    }
    for (Timer timer : sequence.timers()) {
      Function<Function<Lasting, String>, String> text =
          words -> words.apply(timer.lasts()) + " in " + String.join(", ", timer.during());
      facts.put(
          new Key(Part.TIMER, timer.id()),
          new Fact(text.apply(this::written), text.apply(this::meant), timer.place()));
    }
    for (Sequence.Counter counter : sequence.counters()) {
      String limit = value(counter.limit()).map(one -> one.getNumerator() + " times").orElse("");
      String go = counter.go().map(id -> ", then " + id).orElse("");
      put(Part.LIMIT, counter.id(), limit + go, counter.place());
    }
  }

  private static String span(BigFraction seconds) {
    return TIMES.span(seconds).replace('\u00A0', ' ');
  }

  private Optional<BigFraction> value(List<Row> rows) {
    return rows.stream().filter(row -> build.satisfies(row.applies())).findFirst().map(Row::value);
  }

  private String written(Lasting lasting) {
    return lasting.time().orElseGet(() -> meant(lasting));
  }

  private String meant(Lasting lasting) {
    return lasting
        .seconds()
        .or(() -> value(sequence.time(lasting.time().orElseThrow()).rows()))
        .map(SequenceFacts::span)
        .orElse("");
  }

  private void phase(Phase phase) {
    put(Part.PHASE, phase.id(), phase.id(), phase.place());
    put(Part.DISPLAY, phase.id(), phase.display().orElse(""), phase.place());
    put(Part.STOP, phase.id(), phase.stop() ? "yes" : "no", phase.place());
    put(Part.ON, phase.id(), words -> lines(phase.on().stream().map(on -> on(on, words))));
    put(Part.NEXT, phase.id(), words -> lines(phase.next().stream().map(one -> line(one, words))));
  }

  /** In no order: that of lines decides nothing. */
  private static String lines(Stream<Optional<String>> lines) {
    return lines.flatMap(Optional::stream).sorted().collect(Collectors.joining("\n"));
  }

  private Optional<String> on(Energised on, Function<Lasting, String> words) {
    return Optional.of(
            on.output()
                + on.from().map(words).map(from -> " from " + from).orElse("")
                + on.until().map(words).map(until -> " until " + until).orElse(""))
        .filter(text -> build.satisfies(on.applies()));
  }

  private Optional<String> line(Transition line, Function<Lasting, String> words) {
    List<String> parts = new ArrayList<>();
    line.event().map(EventText::of).ifPresent(parts::add);
    line.states().stream().map(in -> in.input() + " is " + in.state()).sorted().forEach(parts::add);
    line.after().map(after -> "after " + over(after, words)).ifPresent(parts::add);
    return Optional.of(
            String.join(" and ", parts)
                + " → "
                + line.go()
                + named(", counts ", line.count())
                + named(", resets ", line.reset())
                + named(", ahead of ", line.aheadOf()))
        .filter(text -> build.satisfies(line.applies()));
  }

  private static String over(After after, Function<Lasting, String> words) {
    return after.timer().orElseGet(() -> words.apply(after.lasting().orElseThrow()));
  }

  private static String named(String label, SortedSet<String> ids) {
    return ids.isEmpty() ? "" : label + String.join(", ", ids);
  }

  private String apart() {
    return sequence.apart().stream()
        .map(apart -> String.join(" + ", apart.outputs()))
        .sorted()
        .collect(Collectors.joining("\n"));
  }

  private void course(Course course) {
    if (build.satisfies(course.applies())) {
      put(Part.COURSE, course.id(), shown(course), course.place());
    }
  }

  private String shown(Course course) {
    try {
      return shown(Courses.follow(Program.of(sequence, build), course));
    } catch (Restless restless) {
      return "without end";
    }
  }

  /** What stands on the display, and from when on. */
  private String shown(Timeline timeline) {
    List<String> lines = new ArrayList<>();
    String now = "";
    for (Timeline.Stay stay : timeline.stays()) {
      Phase phase = sequence.phase(stay.phase());
      String text = phase.display().orElse(phase.id());
      if (stay.steps() > 0 && !text.equals(now)) {
        lines.add(
            TIMES.clock(timeline.seconds(stay.from()), timeline.seconds(timeline.end()))
                + " "
                + text);
        now = text;
      }
    }
    return String.join("\n", lines);
  }
}
