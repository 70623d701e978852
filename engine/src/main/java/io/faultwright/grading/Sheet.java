package io.faultwright.grading;

import java.util.List;

/**
 * What one participant handed in.
 *
 * @param participant number or name, unlike that of any other
 * @param items in the order in which they were given
 */
public record Sheet(String participant, List<Given> items) {
  public Sheet {
    items = List.copyOf(items);
  }

  /** How many items are right. */
  public int right() {
    return (int) items.stream().filter(Given::isRight).count();
  }
}
