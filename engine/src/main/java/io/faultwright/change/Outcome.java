package io.faultwright.change;

import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;

/**
 * What becomes of a situation in a symptom.
 *
 * @param kind what kind of thing
 * @param answers what the technician is told; the clashing answers of a contradiction
 */
public record Outcome(Kind kind, SortedSet<Answer> answers) implements Comparable<Outcome> {
  private static final Comparator<Outcome> ORDER =
      Comparator.comparing(Outcome::kind).thenComparing(outcome -> outcome.answers.toString());

  public Outcome {
    answers = Sorted.set(answers);
  }

  /** The kinds there are, in the order of reports. */
  public enum Kind {
    /** The rules answer. */
    ANSWERED,
    /** Something that must be right first is not: another symptom comes first. */
    SENT_ELSEWHERE,
    /** The rules give answers that exclude each other. */
    CONTRADICTION,
    /** No rule answers. */
    UNANSWERED,
    /** No rule answers because a limits table has no figure. */
    NO_FIGURE,
    /** A {@code never} forbids it, or a value lies outside what its reading can have. */
    CANNOT_HAPPEN,
    /** The readings that define the complaint say otherwise. */
    NOT_RECOGNISED,
    /** The symptom is not offered on this equipment. */
    NOT_OFFERED;

    /** The word in outputs, for instance {@code sent-elsewhere}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether such a situation belongs to the symptom at all. */
    public boolean belongs() {
      return compareTo(CANNOT_HAPPEN) < 0;
    }
  }

  /** An outcome without answers. */
  public static Outcome of(Kind kind) {
    return new Outcome(kind, Sorted.set(List.<Answer>of()));
  }

  @Override
  public int compareTo(Outcome other) {
    return ORDER.compare(this, other);
  }
}
