package io.faultwright.layout;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sets parts in a room at one text size; remembers how a part was placed. */
final class Compositor {
  private final LayeredPlacement layered;
  private final Map<Tree, Placement> placed = new IdentityHashMap<>();

  Compositor(Typography type) {
    this.layered = new LayeredPlacement(type);
  }

  /** The parts in their places, if the room holds them. */
  Optional<List<Placement>> set(List<Part> parts, Box room) {
    if (parts.stream().anyMatch(part -> layered.exceeds(part.tree(), room))) {
      return Optional.empty();
    }
    List<Placement> placements =
        parts.stream().map(part -> placed.computeIfAbsent(part.tree(), layered::place)).toList();
    return new Sheet(room).packed(placements);
  }
}
