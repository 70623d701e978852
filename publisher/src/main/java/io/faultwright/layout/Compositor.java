package io.faultwright.layout;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sets parts in a room at one text size; remembers how a part was placed. */
final class Compositor {
  private final TreePlacement tidy;
  private final Map<Tree, Placement> placed = new IdentityHashMap<>();

  Compositor(Typography type) {
    this.tidy = new TreePlacement(type);
  }

  /** The parts in their places, if the room holds them. */
  Optional<List<Placement>> set(List<Part> parts, Box room) {
    return new Sheet(room).packed(placements(parts));
  }

  /** Whether a room holds parts. */
  boolean fits(List<Part> parts, Box room) {
    return new Sheet(room).holds(placements(parts));
  }

  private List<Placement> placements(List<Part> parts) {
    List<Placement> placements = new ArrayList<>(parts.size());
    for (Part part : parts) {
      placements.add(placed.computeIfAbsent(part.tree(), tidy::place));
    }
    return placements;
  }
}
