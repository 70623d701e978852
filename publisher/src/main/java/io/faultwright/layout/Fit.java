package io.faultwright.layout;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Parts that a page holds, and what came of putting others on it as well. Attempts at breaking a
 * chart share most of their parts, each the very same object; so the same is tried once.
 */
final class Fit {
  private final Printer printer;
  private final List<Part> parts;
  private final boolean turned;
  private final Map<Part, Optional<Fit>> further = new IdentityHashMap<>();

  private Fit(Printer printer, List<Part> parts, boolean turned) {
    this.printer = printer;
    this.parts = List.copyOf(parts);
    this.turned = turned;
  }

  /** Parts on paper as it is turned; nothing where it does not hold them. */
  static Optional<Fit> of(Printer printer, List<Part> parts, boolean turned) {
    return printer.holds(parts, turned)
        ? Optional.of(new Fit(printer, parts, turned))
        : Optional.empty();
  }

  /** With one part more, the paper not being turned; nothing where it does not hold it. */
  Optional<Fit> with(Part part) {
    Optional<Fit> before = further.get(part);
    return before == null ? tried(part) : before;
  }

  private Optional<Fit> tried(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    Optional<Fit> tried = of(printer, more, turned);
    further.put(part, tried);
    return tried;
  }

  /** What is on the page. */
  List<Part> parts() {
    return parts;
  }
}
