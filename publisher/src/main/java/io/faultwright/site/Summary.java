package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import java.util.List;

/**
 * What was published.
 *
 * @param pages pages of the site
 * @param charts drawings
 * @param pdfPages pages of the book; 0 without one
 * @param problems links that lead nowhere; only drafts are published with such
 */
public record Summary(int pages, int charts, int pdfPages, List<Problem> problems) {
  public Summary {
    problems = List.copyOf(problems);
  }
}
