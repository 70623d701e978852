package io.faultwright.report;

import io.faultwright.model.Sequence;
import io.faultwright.resolve.Told;

/** What was seen of a sequence, in words. */
final class ToldWords {
  private final Sequence sequence;

  ToldWords(Sequence sequence) {
    this.sequence = sequence;
  }

  String of(Told told) {
    if (told instanceof Told.OutputIs seen) {
      return sequence.output(seen.output()).title() + (seen.on() ? " on" : " off");
    }
    if (told instanceof Told.PhaseIs seen) {
      return "phase " + sequence.phase(seen.phase()).title() + " (" + seen.phase() + ")";
    }
    return told instanceof Told.Shows seen ? "display " + seen.display() : "nothing";
  }
}
