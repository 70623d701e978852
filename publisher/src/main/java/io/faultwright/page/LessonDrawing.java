package io.faultwright.page;

import io.faultwright.layout.Paper;
import io.faultwright.page.LessonSource.Drawn;
import io.faultwright.prose.Html;
import java.util.List;
import java.util.Optional;

/**
 * A page of a chart in a session.
 *
 * @param svg the drawing
 * @param texts its text where it is lifted out; else none
 * @param wide whether it is wider than high
 */
public record LessonDrawing(Html svg, List<ChartText> texts, boolean wide) {
  public LessonDrawing {
    texts = List.copyOf(texts);
  }

  /** How drawings are put into a session. */
  interface Setting {
    /** A page of a chart; absent where it is not shown. */
    Optional<LessonDrawing> chart(Drawn drawn, String title);

    /**
     * A page of a chart with the way so far; absent where it is not shown.
     *
     * @param last whether the way is at its end
     */
    Optional<LessonDrawing> way(Drawn drawn, String title, boolean last);

    /** Whether tables stand whole, and the text of other drawings is lifted out. */
    boolean isPaper();
  }

  /** Longer charts are too much for a screen: of those the examples show the way. */
  private static final int MOST_PAGES = 2;

  private static LessonDrawing part(Drawn drawn) {
    Drawing drawing = Drawing.of(drawn.part().markup());
    return new LessonDrawing(drawn.part(), List.of(), drawing.wide());
  }

  /** Large parts, to be fitted to a screen. */
  static final Setting ON_SCREEN =
      new Setting() {
        @Override
        public Optional<LessonDrawing> chart(Drawn drawn, String title) {
          return Optional.of(drawn)
              .filter(one -> one.count() <= MOST_PAGES)
              .map(LessonDrawing::part);
        }

        @Override
        public Optional<LessonDrawing> way(Drawn drawn, String title, boolean last) {
          return Optional.of(part(drawn));
        }

        @Override
        public boolean isPaper() {
          return false;
        }
      };

  /** A sheet each, its text lifted out; of a way only the end is shown. */
  static Setting onPaper(Paper paper) {
    return new Setting() {
      @Override
      public Optional<LessonDrawing> chart(Drawn drawn, String title) {
        Drawing drawing = Drawing.of(drawn.sheet().markup());
        double scale = ChartFigures.fit(drawing, paper);
        List<ChartText> texts = drawing.liftTexts(scale);
        drawing.describe(title);
        return Optional.of(new LessonDrawing(drawing.sized(scale), texts, drawing.wide()));
      }

      @Override
      public Optional<LessonDrawing> way(Drawn drawn, String title, boolean last) {
        return last ? chart(drawn, title) : Optional.empty();
      }

      @Override
      public boolean isPaper() {
        return true;
      }
    };
  }
}
