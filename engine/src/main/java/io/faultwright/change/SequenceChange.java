package io.faultwright.change;

import io.faultwright.change.Edit.Concern;
import io.faultwright.change.Edit.Passage;
import io.faultwright.model.Build;
import java.util.List;
import java.util.Optional;

/**
 * A part of a sequence of operation that is otherwise on some machines than it was.
 *
 * @param sequence id of the sequence
 * @param part which part
 * @param of id of the phase, the time, the timer, the counter or the course; else empty
 * @param builds every build on which it is so, as the new revision has it; for a sequence that is
 *     gone, as the old one had it
 * @param before as it was, a line for each way; absent where the new revision has it alone
 * @param after as it is, a line for each way; absent where the old revision had it alone
 */
public record SequenceChange(
    String sequence,
    Part part,
    String of,
    List<Build> builds,
    Optional<Passage> before,
    Optional<Passage> after) {
  public SequenceChange {
    builds = builds.stream().sorted().toList();
  }

  /** Parts of a sequence, in the order of reports. */
  public enum Part {
    /** Whether a machine works by the sequence at all. */
    APPLIES("applies"),
    /** How long something lasts. */
    TIME("time {0}"),
    /** Within what a time can be set. */
    SETTING("set of {0}"),
    /** How long a timer of several phases lasts, and in which it runs. */
    TIMER("timer {0}"),
    /** How often something may come in a row. */
    LIMIT("limit of {0}"),
    /** Whether there is such a phase. */
    PHASE("phase {0}"),
    /** What the display shows in a phase. */
    DISPLAY("display of {0}"),
    /** Whether a phase is a stop. */
    STOP("stop of {0}"),
    /** What is on in a phase. */
    ON("on in {0}"),
    /** What ends a phase, and what follows. */
    NEXT("next of {0}"),
    /** The phase in which it begins. */
    START("start"),
    /** What is never on together. */
    APART("never-together"),
    /** What the display shows in a course of events, and for how long. */
    COURSE("course {0}");

    private final String field;

    Part(String field) {
      this.field = field;
    }

    /** Whether it is told also where only one of the revisions has such a thing. */
    public boolean onOneSide() {
      return this == PHASE || this == COURSE;
    }
  }

  /** Whether the sequence itself came or went. */
  public boolean whole() {
    return part == Part.APPLIES && (before.isEmpty() || after.isEmpty());
  }

  /** The same as something that is written differently. */
  public Edit edit() {
    String field = whole() ? "" : part.field.replace("{0}", of);
    return new Edit(Concern.WORK, "sequence", sequence, field, before, after);
  }
}
