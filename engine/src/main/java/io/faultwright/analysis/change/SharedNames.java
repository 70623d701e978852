package io.faultwright.analysis.change;

import io.faultwright.model.Condition;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import java.util.List;
import java.util.Optional;

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

  /** The only value of an aid that tells where a reading exists. */
  static final String EXISTS = "here";

  private static final Domain HERE =
      new Domain.Choice(List.of(new NamedValue(EXISTS, EXISTS)), false);

  /** A reading whose limits have no figure anywhere. */
  static final String NO_FIGURE = "no figure";

  /** Ends the name of a reading's double, which the new revision's limits judge. */
  static final String NOW = " now";

  private SharedNames() {}

  /** Whether a name is an aid of the comparison and not a reading that somebody takes. */
  static boolean isAid(String name) {
    return name.startsWith(EXISTS_BEFORE)
        || name.startsWith(EXISTS_AFTER)
        || name.equals(NO_FIGURE);
  }

  /** An aid that is one value wherever it exists. */
  static Reading existence(String name, Reading of, Condition applies) {
    return named(name, of, HERE, applies, Optional.empty());
  }

  /** A reading under another name, with another domain, equipment and origin. */
  static Reading named(
      String name, Reading like, Domain domain, Condition applies, Optional<Derived> derived) {
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
        like.normal(),
        derived,
        like.assumed(),
        like.setUp(),
        like.after());
  }
}
