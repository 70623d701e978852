package io.faultwright.page;

import io.faultwright.layout.Paper;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.SortedMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** The pages of a symptom's chart, set into the site or the book. */
final class ChartFigures {
  /** CSS pixels in a point of the drawing: one pixel is 1/96 inch, one point 1/72. */
  private static final double PIXELS_PER_POINT = 96.0 / 72;

  /** Room that the book's chart sheets keep for the page number, in points. */
  private static final double EDGE = 12;

  private static final double FOOT = 36;

  private final SortedMap<String, List<String>> charts;

  ChartFigures(SortedMap<String, List<String>> charts) {
    this.charts = charts;
  }

  /** Each drawing at its own size. */
  List<ChartFigure> onSite(Symptom symptom, Links links) {
    return figures(symptom, links, svg -> PIXELS_PER_POINT);
  }

  /** Each drawing as large as its sheet allows; wide ones lie on a turned sheet. */
  List<ChartFigure> inBook(Symptom symptom, Links links, Paper paper) {
    return figures(symptom, links, svg -> fit(svg, paper, svg.width() > svg.height()));
  }

  private List<ChartFigure> figures(Symptom symptom, Links links, ToDoubleFunction<SvgText> scale) {
    List<SvgText> drawings =
        charts.getOrDefault(symptom.id(), List.of()).stream().map(SvgText::of).toList();
    return IntStream.range(0, drawings.size())
        .mapToObj(
            i ->
                figure(
                    title(symptom, i + 1, drawings.size()),
                    links.file(SitePaths.chart(symptom.id(), i + 1)),
                    drawings.get(i),
                    scale.applyAsDouble(drawings.get(i))))
        .toList();
  }

  private static String title(Symptom symptom, int number, int count) {
    return count == 1
        ? symptom.title() + ", chart"
        : symptom.title() + ", chart " + number + " of " + count;
  }

  private static ChartFigure figure(String title, String href, SvgText svg, double scale) {
    int width = (int) Math.max(1, Math.floor(svg.width() * scale));
    int height = (int) Math.max(1, Math.floor(svg.height() * scale));
    return new ChartFigure(
        title, href, svg.sized(width, height), width, height, svg.width() > svg.height());
  }

  /** The scale at which a drawing fills its sheet; drawings measure in points. */
  private static double fit(SvgText svg, Paper paper, boolean landscape) {
    double width = (landscape ? paper.height() : paper.width()) - EDGE;
    double height = (landscape ? paper.width() : paper.height()) - FOOT;
    return PIXELS_PER_POINT * Math.min(width / svg.width(), height / svg.height());
  }
}
