package io.faultwright.layout;

import java.util.List;
import java.util.Optional;

/** A page while parts are put on it. */
final class Filling {
  private final Part first;
  private Optional<Fit> held;
  private int weight;

  /** A page with its first part, which may be too large for it. */
  Filling(Part part, Printer printer) {
    first = part;
    held = printer.fit(part);
    weight = part.weight();
  }

  /** Takes a part in if the page holds it as well, without being turned. */
  boolean take(Part part) {
    if (held.isEmpty() || weight + part.weight() > Part.FULL) {
      return false;
    }
    // Upright paper that holds all of them is never turned, so turned paper must not hold upright.
    Optional<Fit> more = held.get().with(part);
    if (more.isPresent()) {
      held = more;
      weight += part.weight();
    }
    return more.isPresent();
  }

  /** What is on it. */
  List<Part> parts() {
    return held.map(Fit::parts).orElseGet(() -> List.of(first));
  }

  int weight() {
    return weight;
  }

  /** Whether it holds no more than a page can. */
  boolean fits() {
    return held.isPresent() && weight <= Part.FULL;
  }
}
