package io.faultwright.page;

import io.faultwright.change.SequenceChange.Part;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Program;
import io.faultwright.page.SequenceSection.Exit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the parts of a sequence of operation are on one machine, in words. */
final class SequenceWords {
  private static final String NONE = "–";

  private final Desk desk;
  private final Sequence sequence;
  private final Build build;
  private final Program program;
  private final SequenceBuilds builds;
  private final PhaseRows rows;
  private final TimesTables times;

  SequenceWords(Desk desk, Sequence sequence, Build build) {
    this.desk = desk;
    this.sequence = sequence;
    this.build = build;
    this.program = Program.of(sequence, build);
    this.builds = new SequenceBuilds(desk, sequence, List.of(build));
    this.rows = new PhaseRows(desk, sequence, builds);
    this.times = new TimesTables(desk, sequence, builds);
  }

  /**
   * A part as it is; empty for one that is there or not.
   *
   * @param of id of the phase, time, timer or counter
   */
  String of(Part part, String of) {
    return switch (part) {
      case TIME -> program.seconds(sequence.time(of)).map(builds.times()::span).orElse(NONE);
      case SETTING -> orNone(times.range(sequence.time(of)));
      case TIMER -> timer(of);
      case LIMIT -> limit(sequence.counter(of));
      case DISPLAY -> sequence.phase(of).display().orElse(NONE);
      case STOP -> desk.say(sequence.phase(of).stop() ? "Yes" : "No");
      case ON -> on(sequence.phase(of));
      case NEXT -> next(sequence.phase(of));
      case START -> sequence.phase(sequence.start()).title();
      case APART -> orNone(joined(sequence.apart().stream().map(this::apart).toList()));
      case APPLIES, PHASE, COURSE -> "";
    };
  }

  private static String orNone(String words) {
    return words.isEmpty() ? NONE : words;
  }

  private static String joined(List<String> parts) {
    return String.join("; ", parts);
  }

  private String timer(String id) {
    Timer timer =
        sequence.timers().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    String span = builds.seconds(program, timer.lasts()).map(builds.times()::span).orElse(NONE);
    return span + ", " + times.phases(timer);
  }

  private String limit(Counter counter) {
    Optional<String> limit =
        SequenceBuilds.value(program, counter.limit())
            .map(many -> desk.say("{0} times", many.getNumerator().toString()));
    return counter
        .go()
        .flatMap(go -> limit.map(many -> many + ", " + then(go)))
        .orElse(limit.orElse(NONE));
  }

  private String then(String phase) {
    return desk.say("then follows {0}", sequence.phase(phase).title());
  }

  private String on(Phase phase) {
    return orNone(
        joined(
            phase.on().stream()
                .filter(on -> build.satisfies(on.applies()))
                .map(this::on)
                .toList()));
  }

  private String on(Energised on) {
    String when = rows.when(on);
    return sequence.output(on.output()).title() + (when.isEmpty() ? "" : ", " + when);
  }

  private String next(Phase phase) {
    List<String> lines =
        phase.next().stream()
            .filter(line -> build.satisfies(line.applies()))
            .map(this::line)
            .toList();
    return lines.isEmpty() ? desk.say("Nothing leads on.") : joined(lines);
  }

  private String line(Transition line) {
    Exit exit = rows.exit(line);
    String notes = exit.notes().isEmpty() ? "" : " (" + joined(exit.notes()) + ")";
    return String.join(", ", exit.when()) + " → " + exit.go().text() + notes;
  }

  private String apart(Apart apart) {
    return sequence.outputs().stream()
        .filter(output -> apart.outputs().contains(output.id()))
        .map(Output::title)
        .collect(Collectors.joining(" + "));
  }
}
