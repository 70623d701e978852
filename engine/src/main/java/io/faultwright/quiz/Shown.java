package io.faultwright.quiz;

import io.faultwright.model.Situation;
import java.util.List;

/**
 * What a participant is shown of a machine.
 *
 * @param situation model, software, and some of the readings
 * @param order ids of those readings, in the order in which they are shown
 */
public record Shown(Situation situation, List<String> order) {
  public Shown {
    order = List.copyOf(order);
    if (order.size() != situation.readings().size()
        || !situation.readings().keySet().containsAll(order)) {
      throw new IllegalArgumentException("every reading is shown once: " + order);
    }
  }
}
