package io.faultwright.report;

import io.faultwright.logbook.Came;
import io.faultwright.logbook.Came.Began;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.operation.Line;
import io.faultwright.operation.Program;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Why a machine came into a phase, and what it waits for there. */
final class ReasonWords {
  private final Program program;
  private final StepTimes times;

  ReasonWords(Program program) {
    this.program = program;
    this.times = new StepTimes(program);
  }

  /**
   * For instance {@code Release switch opened at 1:28 and had not closed 25 s later}.
   *
   * @param came the phase and from where
   */
  String why(Came came) {
    return came.now()
        .reason()
        .line()
        .map(line -> why(line, came.before().orElseThrow()) + counted(came))
        .orElse("beginning");
  }

  private String why(Transition line, Began before) {
    List<String> parts = new ArrayList<>();
    line.event().ifPresent(event -> parts.add(past(event)));
    line.after().ifPresent(after -> parts.add(over(after, before, line.event().isPresent())));
    line.states().forEach(state -> parts.add(is(state)));
    List<String> lowered =
        parts.stream().skip(1).map(ReasonWords::lowered).collect(Collectors.toList());
    parts.stream().findFirst().ifPresent(first -> lowered.add(0, first));
    return parts.isEmpty() ? "at once" : String.join(" and ", lowered);
  }

  private String counted(Came came) {
    return came.now()
        .reason()
        .counter()
        .map(program::counter)
        .map(
            number ->
                "; "
                    + lowered(program.counter(number).title())
                    + ": "
                    + program.limit(number)
                    + " of "
                    + program.limit(number))
        .orElse("");
  }

  /** What has run out, and what had not happened by then. */
  private String over(After after, Began before, boolean byEvent) {
    List<Line> awaited =
        Arrays.stream(program.lines(before.phase()))
            .filter(line -> line.waits() && !byEvent)
            .toList();
    Optional<Event> opening = before.reason().line().flatMap(Transition::event);
    Optional<Line> closing =
        awaited.stream()
            .filter(line -> opening.filter(one -> isOf(line, one)).isPresent())
            .findFirst();
    if (closing.isPresent() && after.timer().isEmpty()) {
      return past(opening.orElseThrow())
          + " at "
          + times.clock(before.step())
          + " and "
          + notYet(closing.get().source().event().orElseThrow())
          + (closing.get().source().event().equals(opening) ? " again " : " ")
          + lasting(after)
          + " later";
    }
    String missed =
        awaited.stream()
            .map(line -> line.source().event().orElseThrow())
            .map(event -> lowered(input(event).title()) + " " + notYet(event))
            .collect(Collectors.joining(" and "));
    return named(after) + " over" + (missed.isEmpty() ? "" : ", " + missed);
  }

  private boolean isOf(Line line, Event opening) {
    return line.input() == program.input(opening.input());
  }

  private String lasting(After after) {
    return times.lasting(program.steps(lastingOf(after)));
  }

  private Lasting lastingOf(After after) {
    return after.lasting().orElseGet(() -> timer(after).lasts());
  }

  private Timer timer(After after) {
    return program.sequence().timers().stream()
        .filter(one -> one.id().equals(after.timer().orElseThrow()))
        .findFirst()
        .orElseThrow();
  }

  /** {@code Longest heating: 6 min}, or {@code 6 min} where the time has no name. */
  private String named(After after) {
    Optional<String> title =
        after
            .timer()
            .map(id -> timer(after).title())
            .or(() -> lastingOf(after).time().map(id -> program.sequence().time(id).title()));
    return title.map(one -> one + ": " + lasting(after)).orElseGet(() -> lasting(after));
  }

  private Input input(Event event) {
    return program.sequence().input(event.input());
  }

  /** {@code Release switch opened}. */
  String past(Event event) {
    return told(event, "opened", "closed", "became").map(happens(event)).orElse(title(event));
  }

  private String notYet(Event event) {
    return "had not " + told(event, "opened", "closed", "become").orElse("come");
  }

  private String awaited(Event event) {
    return told(event, "opens", "closes", "becomes").map(happens(event)).orElse(title(event));
  }

  /** What happens to the input, by the verbs of a switch or of any other; empty for a push. */
  private Optional<String> told(Event event, String opens, String closes, String becomes) {
    return event
        .state()
        .map(
            state ->
                switch (state) {
                  case "open" -> opens;
                  case "closed" -> closes;
                  default -> becomes + " " + state(event.input(), state);
                });
  }

  private UnaryOperator<String> happens(Event event) {
    return told -> title(event) + " " + told;
  }

  private String title(Event event) {
    return input(event).title();
  }

  private String is(InState one) {
    return program.sequence().input(one.input()).title() + " is " + state(one.input(), one.state());
  }

  /** The title of a state; its id where that says no more than the title of the input. */
  private String state(String id, String state) {
    Input input = program.sequence().input(id);
    return input.states().stream()
        .filter(one -> one.id().equals(state))
        .map(NamedValue::title)
        .filter(title -> !title.equals(input.title()))
        .map(ReasonWords::lowered)
        .findFirst()
        .orElse(state);
  }

  /** What leads on from a phase, a line for each: {@code Release switch closes}. */
  List<String> waiting(Began phase) {
    return Arrays.stream(program.lines(phase.phase()))
        .filter(line -> line.after() != Program.NEVER)
        .map(line -> waiting(line, phase))
        .toList();
  }

  private String waiting(Line line, Began phase) {
    Transition source = line.source();
    List<String> parts = new ArrayList<>();
    source.event().ifPresent(event -> parts.add(awaited(event)));
    source.states().forEach(state -> parts.add(is(state)));
    source.after().ifPresent(after -> parts.add(named(after) + " over" + due(line, phase)));
    return String.join(" and ", parts) + ", then " + title(line.go()) + limited(line);
  }

  /** Where a line leads instead once what it counts has reached its limit. */
  private String limited(Line line) {
    return Arrays.stream(line.count())
        .filter(counter -> program.limit(counter) != Program.NEVER)
        .mapToObj(
            counter ->
                ", or "
                    + title(program.limitGo(counter))
                    + " at "
                    + program.limit(counter)
                    + " of "
                    + program.limit(counter))
        .collect(Collectors.joining());
  }

  private String title(int phase) {
    return program.phase(phase).title();
  }

  private String due(Line line, Began phase) {
    return line.clock() == 0 ? " at " + times.clock(phase.step() + line.after()) : "";
  }

  /** A title in the middle of a sentence; what is written in capitals stays so. */
  static String lowered(String title) {
    boolean word = title.length() > 1 && Character.isLowerCase(title.charAt(1));
    return word ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1) : title;
  }
}
