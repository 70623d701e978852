package io.faultwright.site;

import io.faultwright.page.ChartSheet;
import java.util.List;

/**
 * What is made from the charts of a symptom.
 *
 * @param sheets their pages, in order
 * @param diagnosis the same checks as data for guided diagnosis
 */
public record Drawn(List<ChartSheet> sheets, byte[] diagnosis) {
  public Drawn {
    sheets = List.copyOf(sheets);
  }
}
