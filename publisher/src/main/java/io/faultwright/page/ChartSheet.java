package io.faultwright.page;

/**
 * One page of a chart.
 *
 * @param drawing of the page
 * @param scope the equipment it is for; empty where it is everything
 * @param number of the page, from 1
 * @param count of pages that the chart has
 */
public record ChartSheet(Source drawing, String scope, int number, int count) {
  /** Gives the drawing when it is asked for. */
  public interface Source {
    String svg();
  }

  /** The drawing, as a standalone SVG file. */
  public String svg() {
    return drawing.svg();
  }
}
