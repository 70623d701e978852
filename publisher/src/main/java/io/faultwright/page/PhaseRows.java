package io.faultwright.page;

import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.page.SequenceSection.Exit;
import io.faultwright.page.SequenceSection.OutputCell;
import io.faultwright.page.SequenceSection.PhaseRow;
import io.faultwright.page.SequenceSection.Stretch;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The table of a sequence of operation: what is on in each phase, and what ends it. */
final class PhaseRows {
  private final Desk desk;
  private final Sequence sequence;
  private final SequenceBuilds builds;
  private final InputWords inputs;

  PhaseRows(Desk desk, Sequence sequence, SequenceBuilds builds) {
    this.desk = desk;
    this.sequence = sequence;
    this.builds = builds;
    this.inputs = new InputWords(desk.words().say(), sequence);
  }

  /** The id of a phase's row. */
  static String anchor(Sequence sequence, String phase) {
    return new Target(Target.Kind.SEQUENCE, sequence.id()).anchor() + ".phase." + phase;
  }

  List<PhaseRow> all() {
    return sequence.phases().stream().map(this::row).toList();
  }

  private PhaseRow row(Phase phase) {
    return new PhaseRow(
        anchor(sequence, phase.id()),
        sequence.phases().indexOf(phase) + 1,
        phase.title(),
        phase.about(),
        phase.display(),
        phase.stop(),
        sequence.outputs().stream().map(output -> cell(phase, output)).toList(),
        phase.next().stream().map(this::exit).toList(),
        phase.next().isEmpty() ? desk.say("Nothing leads on.") : "");
  }

  private OutputCell cell(Phase phase, Output output) {
    return new OutputCell(
        output.title(),
        phase.on().stream()
            .filter(on -> on.output().equals(output.id()))
            .map(on -> new Stretch(when(on), builds.applies(on.applies())))
            .toList());
  }

  /** In which part of its phase; empty for all of it. */
  String when(Energised on) {
    Optional<String> from = on.from().map(time -> builds.span(time, on.applies()));
    Optional<String> until = on.until().map(time -> builds.span(time, on.applies()));
    if (from.isPresent()) {
      return until
          .map(end -> desk.say("{0} to {1}", from.get(), end))
          .orElseGet(() -> desk.say("from {0}", from.get()));
    }
    return until.map(end -> desk.say("first {0}", end)).orElse("");
  }

  /** A line that leads on. */
  Exit exit(Transition line) {
    Optional<Lasting> lasting = line.after().flatMap(after -> lasting(after));
    return new Exit(
        conditions(line),
        lasting.map(time -> builds.differing(time, line.applies())).orElse(List.of()),
        phase(line.go()),
        notes(line),
        builds.applies(line.applies()),
        line.because());
  }

  private Link phase(String id) {
    return new Link(sequence.phase(id).title(), "#" + anchor(sequence, id));
  }

  private Optional<Lasting> lasting(Sequence.After after) {
    return after.lasting().or(() -> after.timer().map(this::timer).map(Timer::lasts));
  }

  private Timer timer(String id) {
    return sequence.timers().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private List<String> conditions(Transition line) {
    List<String> lines = new ArrayList<>();
    line.event().ifPresent(event -> lines.add(inputs.event(event)));
    line.states().stream()
        .map(inputs::state)
        .map(state -> line.event().isPresent() ? desk.say("while {0}", state) : state)
        .forEach(lines::add);
    line.after().ifPresent(after -> lines.add(after(line, after)));
    if (lines.isEmpty()) {
      lines.add(desk.say("At once"));
    }
    lines.set(0, Words.upperFirst(lines.get(0)));
    return lines;
  }

  private String after(Transition line, Sequence.After after) {
    Lasting lasting = lasting(after).orElseThrow();
    String span = builds.span(lasting, line.applies());
    boolean one = builds.differing(lasting, line.applies()).isEmpty();
    boolean waits = line.event().isPresent();
    return title(after)
        .map(title -> one ? title + " (" + span + ")" : title)
        .map(title -> waits ? notBefore(title) : desk.say("{0} is over", title))
        .orElseGet(() -> waits ? desk.say("not before {0}", span) : desk.say("after {0}", span));
  }

  private String notBefore(String title) {
    return desk.say("not before {0} is over", desk.words().say().inLine(title));
  }

  /** Of a timer, or of a time that has a name. */
  private Optional<String> title(Sequence.After after) {
    return after
        .timer()
        .map(id -> timer(id).title())
        .or(() -> after.lasting().flatMap(Lasting::time).map(id -> sequence.time(id).title()));
  }

  private List<String> notes(Transition line) {
    List<String> notes = new ArrayList<>();
    line.count().stream().map(sequence::counter).forEach(one -> notes.add(counts(one)));
    line.reset().stream()
        .map(sequence::counter)
        .forEach(one -> notes.add(desk.say("{0}: begins again at 0", one.title())));
    if (!line.aheadOf().isEmpty()) {
      notes.add(desk.say("goes ahead of the line to {0}", titles(line.aheadOf())));
    }
    return notes;
  }

  private String counts(Counter counter) {
    List<String> limits = limits(counter);
    return counter
        .go()
        .filter(go -> !limits.isEmpty())
        .map(
            go ->
                desk.say(
                    "counts {0}; at {1} → {2}",
                    counter.title(), desk.words().say().or(limits), sequence.phase(go).title()))
        .orElseGet(() -> desk.say("counts {0}", counter.title()));
  }

  private List<String> limits(Counter counter) {
    return SequenceBuilds.alike(builds.all(), one -> SequenceBuilds.value(one, counter.limit()))
        .keySet()
        .stream()
        .flatMap(Optional::stream)
        .map(limit -> limit.getNumerator().toString())
        .toList();
  }

  private String titles(Collection<String> phases) {
    return desk.words().say().or(phases.stream().map(id -> sequence.phase(id).title()).toList());
  }
}
