package io.faultwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A page while parts are put on it. */
final class Filling {
  private final List<Part> parts = new ArrayList<>();
  private final Optional<Boolean> turned;
  private int weight;

  /** A page with its first part, which may be too large for it. */
  Filling(Part part, Printer printer) {
    parts.add(part);
    weight = part.weight();
    turned = printer.turned(parts);
  }

  /** Takes a part in if the page holds it as well, without being turned. */
  boolean take(Part part, Printer printer) {
    if (turned.isEmpty() || weight + part.weight() > Part.FULL) {
      return false;
    }
    parts.add(part);
    // Upright paper that holds all of them is never turned, so turned paper must not hold upright.
    boolean taken = printer.fits(parts, turned.get());
    if (taken) {
      weight += part.weight();
    } else {
      parts.remove(parts.size() - 1);
    }
    return taken;
  }

  /** What is on it. */
  List<Part> parts() {
    return List.copyOf(parts);
  }

  int weight() {
    return weight;
  }

  /** Whether it holds no more than a page can. */
  boolean fits() {
    return turned.isPresent() && weight <= Part.FULL;
  }
}
