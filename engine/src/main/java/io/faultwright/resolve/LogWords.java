package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads what a log says of one sequence: events such as {@code door-switch opens}, and what was
 * seen, such as {@code heater off}, {@code phase heating} or {@code shows FULL}.
 */
public final class LogWords {
  /** The word before the id of a phase, and the column that tells it. */
  public static final String PHASE = "phase";

  /** The word before what a display shows. */
  public static final String SHOWS = "shows";

  /** The column that tells what a display shows. */
  public static final String DISPLAY = "display";

  /** The column that tells events. */
  public static final String EVENT = "event";

  /** Says that the log goes on until here. */
  public static final String END = "end";

  private static final String ON = "on";
  private static final String OFF = "off";
  private static final String PRESSED = "pressed";
  private static final String RELEASED = "released";

  private final Problems problems;
  private final Map<String, Input> inputs;
  private final List<String> outputs;
  private final List<String> phases;
  private final List<String> displays;
  private final EventWords events;

  public LogWords(Sequence sequence, Problems problems) {
    this.problems = problems;
    this.inputs =
        sequence.inputs().stream().collect(Collectors.toMap(Input::id, Function.identity()));
    this.outputs = sequence.outputs().stream().map(Output::id).toList();
    this.phases = sequence.phases().stream().map(Phase::id).toList();
    this.displays = displays(sequence);
    this.events = EventWords.of(sequence, problems);
  }

  /** Everything that a display can show, in the order of the phases. */
  public static List<String> displays(Sequence sequence) {
    return sequence.phases().stream()
        .flatMap(phase -> phase.display().stream())
        .distinct()
        .toList();
  }

  /** What an entry says; reports what it cannot mean. */
  public Optional<Told> entry(Scalar written) {
    String text = written.text().strip();
    int blank = text.indexOf(' ');
    String first = blank < 0 ? text : text.substring(0, blank);
    Scalar rest = new Scalar(text.substring(first.length()).strip(), false, written.place());
    if (first.equals(END) && rest.text().isEmpty()) {
      return Optional.of(new Told.Nothing());
    }
    if (first.equals(PHASE)) {
      return phase(rest);
    }
    if (first.equals(SHOWS)) {
      return shows(rest);
    }
    if (outputs.contains(first) && !isState(first, rest.text())) {
      return output(first, rest);
    }
    return inputs.containsKey(first) ? event(written) : unknown(written, first);
  }

  private boolean isState(String id, String state) {
    return Optional.ofNullable(inputs.get(id)).stream()
        .anyMatch(input -> !(state.equals(ON) || state.equals(OFF)) || states(input, state));
  }

  private static boolean states(Input input, String state) {
    return input.states().stream().map(NamedValue::id).anyMatch(state::equals);
  }

  private Optional<Told> unknown(Scalar written, String first) {
    List<String> known = new ArrayList<>(inputs.keySet());
    known.addAll(outputs);
    known.addAll(List.of(PHASE, SHOWS, END));
    return unknown(written, Words.quoted(first) + " is no input and no output", first, known);
  }

  private <T> Optional<T> unknown(
      Scalar written, String message, String word, Collection<String> known) {
    String found = word.isEmpty() ? "something is missing behind the first word" : message;
    problems.add(written.place(), found, NearMatch.help(word, known));
    return Optional.empty();
  }

  private Optional<Told> event(Scalar written) {
    return events.event(written).map(Told.Happened::new);
  }

  private Optional<Told> phase(Scalar id) {
    return phases.contains(id.text())
        ? Optional.of(new Told.PhaseIs(id.text()))
        : unknown(id, "unknown phase " + Words.quoted(id.text()), id.text(), phases);
  }

  private Optional<Told> shows(Scalar text) {
    return displays.contains(text.text())
        ? Optional.of(new Told.Shows(text.text()))
        : unknown(text, "no phase shows " + Words.quoted(text.text()), text.text(), displays);
  }

  private Optional<Told> output(String id, Scalar word) {
    String folded = ColumnMap.folded(word.text());
    if (folded.equals(ON) || folded.equals(OFF)) {
      return Optional.of(new Told.OutputIs(id, folded.equals(ON)));
    }
    String message =
        Words.quoted(id) + " is an output, on or off, found " + Words.quoted(word.text());
    return unknown(word, message, word.text(), List.of(ON, OFF));
  }

  /** What a column can be. */
  List<String> targets() {
    List<String> targets = new ArrayList<>(inputs.keySet());
    targets.addAll(outputs);
    targets.addAll(List.of(PHASE, DISPLAY, EVENT));
    return targets;
  }

  /**
   * What a cell says; reports what it cannot mean.
   *
   * @param target what its column is: an input, an output, {@link #PHASE}, {@link #DISPLAY} or
   *     {@link #EVENT}
   */
  public Optional<Told> cell(String target, Scalar cell) {
    return switch (target) {
      case PHASE -> phase(cell);
      case DISPLAY -> shows(cell);
      case EVENT -> entry(cell);
      default ->
          inputs.containsKey(target) ? input(inputs.get(target), cell) : output(target, cell);
    };
  }

  private Optional<Told> input(Input input, Scalar cell) {
    String word = ColumnMap.folded(cell.text());
    if (!input.isPush()) {
      return states(input, word)
          ? Optional.of(happened(input, Optional.of(word)))
          : noState(input, cell, input.states().stream().map(NamedValue::id).toList());
    }
    if (word.equals(RELEASED)) {
      return Optional.of(new Told.Nothing());
    }
    return word.equals(PRESSED)
        ? Optional.of(happened(input, Optional.empty()))
        : noState(input, cell, List.of(PRESSED, RELEASED));
  }

  private static Told happened(Input input, Optional<String> state) {
    return new Told.Happened(new Event(input.id(), state));
  }

  private Optional<Told> noState(Input input, Scalar cell, List<String> known) {
    String message = Words.quoted(input.id()) + " has no state " + Words.quoted(cell.text());
    return unknown(cell, message, cell.text(), known);
  }
}
