package io.faultwright.page;

import java.util.List;

/**
 * Everything that keeps people unhurt.
 *
 * @param disclaimer what the handbook defers to
 * @param notes further printed lines
 * @param items every caution, gravest first
 */
public record SafetySection(String disclaimer, List<String> notes, List<Item> items)
    implements Content {
  /**
   * A caution with where it holds.
   *
   * @param panel the caution
   * @param covers kinds of work it belongs to by itself
   * @param uses pages that show it
   */
  public record Item(CautionPanel panel, String covers, List<Link> uses) {}
}
