package io.faultwright.resolve;

import io.faultwright.model.Sequence.Event;

/** What an entry of a log says of a sequence. */
public sealed interface Told {
  /** Nothing, or nothing that is of concern. */
  record Nothing() implements Told {}

  /**
   * Something happened to an input.
   *
   * @param event what
   */
  record Happened(Event event) implements Told {}

  /**
   * An output was seen on or off.
   *
   * @param output its id
   */
  record OutputIs(String output, boolean on) implements Told {}

  /**
   * The controller was in a phase.
   *
   * @param phase its id
   */
  record PhaseIs(String phase) implements Told {}

  /**
   * The display showed something.
   *
   * @param display what, as the sequence writes it
   */
  record Shows(String display) implements Told {}
}
