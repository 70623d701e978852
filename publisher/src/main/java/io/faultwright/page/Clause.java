package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * One line of a condition, or a heading over several.
 *
 * @param subject the reading or equipment fact; absent for a heading
 * @param text what the subject must be, or the heading
 * @param parts the lines under a heading
 */
public record Clause(Optional<Link> subject, String text, List<Clause> parts) {
  public Clause {
    parts = List.copyOf(parts);
  }
}
