package io.faultwright.logbook;

import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Line;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogWords;
import io.faultwright.resolve.Told;
import java.util.List;

/** What can be seen of a sequence, numbered: its outputs, then its phase, then its display. */
final class Signals {
  /** What cannot be told apart from anything: a display of which nothing is written. */
  static final int ANYTHING = -1;

  private static final int OFF = 0;
  private static final int ON = 1;

  private final Program program;
  private final List<String> outputs;
  private final List<String> displays;
  private final int[] shown;

  Signals(Program program) {
    this.program = program;
    this.outputs = program.sequence().outputs().stream().map(one -> one.id()).toList();
    this.displays = LogWords.displays(program.sequence());
    this.shown =
        program.sequence().phases().stream()
            .mapToInt(one -> one.display().map(displays::indexOf).orElse(ANYTHING))
            .toArray();
  }

  int count() {
    return outputs.size() + 2;
  }

  boolean isOutput(int signal) {
    return signal < outputs.size();
  }

  /** What a phase, or a display in a phase, is seen as. */
  int value(int signal, int phase) {
    return signal == outputs.size() ? phase : shown[phase];
  }

  static int onOff(boolean on) {
    return on ? ON : OFF;
  }

  /** A value that was seen, with ids. */
  Told told(int signal, int value) {
    if (isOutput(signal)) {
      return new Told.OutputIs(outputs.get(signal), value == ON);
    }
    if (signal == outputs.size()) {
      return new Told.PhaseIs(program.phase(value).id());
    }
    return value == ANYTHING ? new Told.Nothing() : new Told.Shows(displays.get(value));
  }

  /** What an entry says, in numbers. */
  Said said(Told told) {
    if (told instanceof Told.Happened happened) {
      return event(told, happened.event());
    }
    if (told instanceof Told.OutputIs seen) {
      return seen(told, outputs.indexOf(seen.output()), onOff(seen.on()));
    }
    if (told instanceof Told.PhaseIs seen) {
      return seen(told, outputs.size(), program.phase(seen.phase()));
    }
    if (told instanceof Told.Shows seen) {
      return seen(told, outputs.size() + 1, displays.indexOf(seen.display()));
    }
    return new Said(told, Said.Kind.NOTHING, 0, 0);
  }

  private Said event(Told told, Event event) {
    int input = program.input(event.input());
    int state = event.state().map(one -> program.state(input, one)).orElse(Line.NONE);
    return new Said(told, Said.Kind.EVENT, input, state);
  }

  private static Said seen(Told told, int signal, int value) {
    return new Said(told, Said.Kind.SEEN, signal, value);
  }
}
