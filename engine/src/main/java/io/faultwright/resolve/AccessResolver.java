package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Access;
import io.faultwright.syntax.Node.Scalar;
import java.util.Optional;

/** Reads what has to be opened or touched. */
final class AccessResolver {
  private final Problems problems;

  AccessResolver(Problems problems) {
    this.problems = problems;
  }

  /** The access below the key {@code access}; from outside where nothing is said. */
  Access of(Fields fields) {
    return fields.scalar("access").flatMap(this::read).orElse(Access.OUTSIDE);
  }

  Optional<Access> read(Scalar written) {
    Optional<Access> access = Access.of(written.text().strip());
    if (access.isEmpty()) {
      problems.add(
          written.place(),
          "unknown access " + Words.quoted(written.text()),
          NearMatch.help(written.text().strip(), Access.words()));
    }
    return access;
  }
}
