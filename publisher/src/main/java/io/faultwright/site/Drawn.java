package io.faultwright.site;

import io.faultwright.page.ChartSheet;
import io.faultwright.piece.Fingerprint;
import java.util.List;

/**
 * What is made from the charts of a symptom.
 *
 * @param sheets their pages, in order
 * @param diagnosis the same checks as data for guided diagnosis
 * @param from what all of it is made from
 */
public record Drawn(List<ChartSheet> sheets, byte[] diagnosis, Fingerprint from) {
  public Drawn {
    sheets = List.copyOf(sheets);
  }
}
