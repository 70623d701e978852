package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;

/** A column that a map says is of no concern. */
final class IgnoredColumn {
  private IgnoredColumn() {}

  /** Its name; reports it where the same map uses it, at {@code used}. */
  static String name(Scalar heading, Optional<Scalar> used, Problems problems) {
    used.ifPresent(
        other ->
            problems.add(
                new Problem(
                    List.of(heading.place(), other.place()),
                    "column " + Words.quoted(heading.text()) + " is ignored and used",
                    "remove one of the two")));
    return heading.text().strip();
  }
}
