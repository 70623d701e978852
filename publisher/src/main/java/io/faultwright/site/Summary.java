package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import java.util.List;

/**
 * What was published.
 *
 * @param pages pages of the site
 * @param charts drawings
 * @param pdfPages pages of the book; 0 without one
 * @param undrawn characters that the book shows as a question mark, since its typeface lacks them
 * @param problems links that lead nowhere; only drafts are published with such
 */
public record Summary(int pages, int charts, int pdfPages, String undrawn, List<Problem> problems) {
  public Summary {
    problems = List.copyOf(problems);
  }
}
