package io.faultwright.page;

import io.faultwright.prose.Html;
import java.util.List;

/**
 * One page of a symptom's chart.
 *
 * @param anchor id of its element
 * @param title what it is, with its number
 * @param scope the equipment its chart is for; empty where it is everything
 * @param number of the page in its chart, from 1
 * @param href its own file
 * @param svg the drawing
 * @param texts the drawing's text where it is lifted out; else none
 * @param wide whether it is wider than high
 */
public record ChartFigure(
    String anchor,
    String title,
    String scope,
    int number,
    String href,
    Html svg,
    List<ChartText> texts,
    boolean wide) {
  public ChartFigure {
    texts = List.copyOf(texts);
  }

  /** The same page with its drawing. */
  ChartFigure with(Html drawing, List<ChartText> lifted) {
    return new ChartFigure(anchor, title, scope, number, href, drawing, lifted, wide);
  }
}
