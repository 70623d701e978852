package io.faultwright.analysis.change;

import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import java.util.SortedSet;

/**
 * Names of readings that only the joined knowledge base has. They hold a blank, which no trainer's
 * id does.
 */
final class SharedNames {
  /** Ends the name of a reading that the new revision has in another nature. */
  static final String BEFORE = " before";

  /** Begins the name of a reading that exists where the old revision has the reading named. */
  static final String EXISTS_BEFORE = "exists before ";

  /** Begins the name of a reading that exists where the new revision has the reading named. */
  static final String EXISTS_AFTER = "exists after ";

  /** A reading whose limits have no figure anywhere. */
  static final String NO_FIGURE = "no figure";

  private SharedNames() {}

  /** Whether a name is an aid of the comparison and not a reading that somebody takes. */
  static boolean isAid(String name) {
    return name.startsWith(EXISTS_BEFORE)
        || name.startsWith(EXISTS_AFTER)
        || name.equals(NO_FIGURE);
  }

  /** A reading with another domain, other equipment and other normal values. */
  static Reading reading(
      Reading like, Domain domain, Condition applies, SortedSet<String> normal) {
    return named(like.id(), like, domain, applies, normal);
  }

  /** A reading under another name, with another domain, equipment and normal values. */
  static Reading named(
      String name, Reading like, Domain domain, Condition applies, SortedSet<String> normal) {
    return new Reading(
        name,
        like.place(),
        like.title(),
        like.ask(),
        domain,
        like.access(),
        like.minutes(),
        like.how(),
        like.where(),
        like.phase(),
        like.instrument(),
        like.accuracy(),
        like.cautions(),
        like.guide(),
        applies,
        normal);
  }
}
