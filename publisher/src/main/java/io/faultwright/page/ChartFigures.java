package io.faultwright.page;

import io.faultwright.layout.Paper;
import io.faultwright.model.Symptom;
import io.faultwright.page.Target.Kind;
import io.faultwright.prose.Html;
import io.faultwright.words.Words;
import java.util.List;
import java.util.SortedMap;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The pages of a symptom's chart, set into the site or the book. */
final class ChartFigures {
  /** CSS pixels in a point of the drawing: one pixel is 1/96 inch, one point 1/72. */
  private static final double PIXELS_PER_POINT = 96.0 / 72;

  /** Room that the book's chart sheets keep for the page number, in points. */
  private static final double EDGE = 12;

  private static final double FOOT = 36;

  private final SortedMap<String, List<ChartSheet>> charts;
  private final Words say;

  ChartFigures(SortedMap<String, List<ChartSheet>> charts, Words say) {
    this.say = say;
    this.charts = charts;
  }

  /** Each drawing at its own size. */
  List<ChartFigure> onSite(Symptom symptom, Links links) {
    return figures(
        symptom,
        links,
        (drawing, figure) -> figure.with(drawing.sized(PIXELS_PER_POINT), List.of()));
  }

  /** Each drawing as large as its sheet allows, its text lifted out; wide ones lie turned. */
  List<ChartFigure> inBook(Symptom symptom, Links links, Paper paper) {
    return figures(symptom, links, (drawing, figure) -> set(drawing, figure, paper));
  }

  private static ChartFigure set(Drawing drawing, ChartFigure figure, Paper paper) {
    double scale = fit(drawing, paper);
    List<ChartText> texts = drawing.liftTexts(scale);
    drawing.describe(figure.title());
    return figure.with(drawing.sized(scale), texts);
  }

  private List<ChartFigure> figures(
      Symptom symptom, Links links, BiFunction<Drawing, ChartFigure, ChartFigure> setting) {
    List<ChartSheet> sheets = charts.getOrDefault(symptom.id(), List.of());
    return IntStream.rangeClosed(1, sheets.size())
        .mapToObj(
            number -> {
              ChartSheet sheet = sheets.get(number - 1);
              Drawing drawing = Drawing.of(sheet.svg());
              return setting.apply(drawing, bare(symptom, links, sheet, drawing.wide(), number));
            })
        .toList();
  }

  private ChartFigure bare(
      Symptom symptom, Links links, ChartSheet sheet, boolean wide, int number) {
    return new ChartFigure(
        new Target(Kind.SYMPTOM, symptom.id()).anchor() + "-chart-" + number,
        title(symptom.title(), sheet, say),
        sheet.scope(),
        sheet.number(),
        links.file(SitePaths.chart(symptom.id(), number)),
        Html.NONE,
        List.of(),
        wide);
  }

  /** What a page is called. */
  static String title(String symptom, ChartSheet sheet, Words say) {
    String title =
        sheet.scope().isEmpty()
            ? say.say("{0}, chart", symptom)
            : say.say("{0}, chart for {1}", symptom, sheet.scope());
    return sheet.count() == 1
        ? title
        : say.say("{0}, {1} of {2}", title, sheet.number(), sheet.count());
  }

  /** The scale at which a drawing fills its sheet. */
  static double fit(Drawing drawing, Paper paper) {
    double width = (drawing.wide() ? paper.height() : paper.width()) - EDGE;
    double height = (drawing.wide() ? paper.width() : paper.height()) - FOOT;
    return PIXELS_PER_POINT * Math.min(width / drawing.width(), height / drawing.height());
  }
}
