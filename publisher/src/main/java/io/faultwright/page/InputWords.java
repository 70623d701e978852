package io.faultwright.page;

import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Input;
import io.faultwright.words.Words;

/** What the inputs of a sequence do, in words. A contact opens and closes; others change. */
final class InputWords {
  private static final String OPEN = "open";
  private static final String CLOSED = "closed";

  private final Words say;
  private final Sequence sequence;

  InputWords(Words say, Sequence sequence) {
    this.say = say;
    this.sequence = sequence;
  }

  /** A push is named alone: it may be a button or the call of a clock. */
  String event(Event event) {
    Input input = sequence.input(event.input());
    return event.state().map(state -> comes(input, state)).orElse(input.title());
  }

  private String comes(Input input, String state) {
    return switch (state) {
      case OPEN -> say.say("{0} opens", input.title());
      case CLOSED -> say.say("{0} closes", input.title());
      default -> say.say("{0} changes to: {1}", input.title(), title(input, state));
    };
  }

  String state(InState in) {
    return state(sequence.input(in.input()), in.state());
  }

  String state(Input input, String state) {
    return switch (state) {
      case OPEN -> say.say("{0} is open", input.title());
      case CLOSED -> say.say("{0} is closed", input.title());
      default -> say.say("{0}: {1}", input.title(), title(input, state));
    };
  }

  private static String title(Input input, String state) {
    return input.states().stream()
        .filter(one -> one.id().equals(state))
        .map(NamedValue::title)
        .findFirst()
        .orElse(state);
  }
}
