package io.faultwright.wording;

import io.faultwright.model.Sequence.Event;

/** Events as they are written in rules and logs. */
public final class EventText {
  private EventText() {}

  /** {@code door-switch opens}, {@code call becomes made}, {@code reset-button}. */
  public static String of(Event event) {
    return event.state().map(state -> event.input() + " " + verb(state)).orElse(event.input());
  }

  private static String verb(String state) {
    return switch (state) {
      case "open" -> "opens";
      case "closed" -> "closes";
      default -> "becomes " + state;
    };
  }
}
