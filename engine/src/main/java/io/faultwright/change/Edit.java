package io.faultwright.change;

import io.faultwright.source.Place;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that is written differently, or on one side only.
 *
 * @param concern whom it concerns
 * @param kind what kind of thing, for instance {@code fault}
 * @param id its id; that of a rule has its symptom before it
 * @param field which part of it; empty for the whole thing
 * @param before as it was; absent where the new revision has it alone
 * @param after as it is; absent where the old revision had it alone
 */
public record Edit(
    Concern concern,
    String kind,
    String id,
    String field,
    Optional<Passage> before,
    Optional<Passage> after)
    implements Comparable<Edit> {
  private static final Comparator<Edit> ORDER =
      Comparator.comparing(Edit::concern)
          .thenComparing(Edit::kind)
          .thenComparing(Edit::id)
          .thenComparing(Edit::field);

  /** Whom an edit concerns. */
  public enum Concern {
    /** The rules and what they judge by; the regions say whether an outcome changed. */
    RULES,
    /** How the technician works: readings, repair, verification, parts, cautions. */
    WORK,
    /** Titles, explanations and other prose. */
    TEXT,
    /** Recorded cases. */
    CASES;

    /** The word in outputs. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** How something is written, and where. */
  public record Passage(String text, Place place) {}

  /** Whether a whole thing came or went. */
  public boolean whole() {
    return field.isEmpty();
  }

  /** {@code added}, {@code removed} or {@code changed}. */
  public String manner() {
    if (before.isEmpty()) {
      return "added";
    }
    return after.isEmpty() ? "removed" : "changed";
  }

  /** Where to look: in the new revision, or in the old one where it is gone. */
  public Place place() {
    return after.or(() -> before).orElseThrow().place();
  }

  @Override
  public int compareTo(Edit other) {
    return ORDER.compare(this, other);
  }
}
