package io.faultwright.page;

import java.util.List;

/**
 * Every spare part.
 *
 * @param items in the written order
 */
public record PartsSection(List<Item> items) implements Content {
  /**
   * A spare part with the faults that need it.
   *
   * @param anchor id of its element
   * @param title as printed
   * @param number order number; empty where none is given
   * @param uses the faults
   */
  public record Item(String anchor, String title, String number, List<Link> uses) {}
}
