package io.faultwright.analysis.order;

import io.faultwright.model.Build;
import java.util.List;
import java.util.Optional;

/**
 * The order of checks on some equipment.
 *
 * @param builds the equipment
 * @param situations that can be met on it
 * @param checks the order; absent where there are too many ways for one
 */
public record ScopedOrder(List<Build> builds, int situations, Optional<CheckOrder> checks) {
  public ScopedOrder {
    builds = List.copyOf(builds);
  }
}
