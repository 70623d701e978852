package io.faultwright.layout;

import io.faultwright.layout.TimeScale.Piece;
import io.faultwright.layout.TimingDiagram.Stroke;
import io.faultwright.words.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The axis of time under a timing diagram: ticks at round times, and where it is cut. */
final class TimeAxis {
  private static final double TICK = 4;
  private static final double APART = 6;
  private static final double SLANT = 2;

  /** Tenths of seconds from tick to tick. */
  private static final long[] ROUND = {
    1, 2, 5, 10, 20, 50, 100, 150, 200, 300, 600, 1200, 1800, 3000, 6000, 9000, 12000, 18000, 36000,
    72000, 144000, 216000, 432000
  };

  private final TimeScale scale;
  private final Words say;
  private final double y;
  private final double size;
  private final boolean hours;
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();

  /**
   * @param y of the axis
   * @param size of its figures
   * @param hours whether its figures show hours
   * @param begins when phases begin; told where a part of a cut axis has no round time
   */
  TimeAxis(TimeScale scale, Words say, double y, double size, boolean hours, List<Double> begins) {
    this.scale = scale;
    this.say = say;
    this.y = y;
    this.size = size;
    this.hours = hours;
    for (Piece piece : scale.shown()) {
      line(piece.left(), y, piece.right(), y, Stroke.Kind.AXIS);
    }
    scale.cuts().forEach(this::cut);
    ticks();
    scale.shown().forEach(piece -> tell(piece, begins));
  }

  /** The depth of ticks and figures. */
  double height() {
    return TICK + size * 1.2;
  }

  List<Stroke> strokes() {
    return strokes;
  }

  List<Text> texts() {
    return texts;
  }

  private void line(double x1, double y1, double x2, double y2, Stroke.Kind kind) {
    strokes.add(new Stroke(kind, new Point(x1, y1), new Point(x2, y2)));
  }

  private void cut(Piece cut) {
    for (double x : new double[] {cut.left() + SLANT, cut.right() - SLANT}) {
      line(x - SLANT, y + TICK, x + SLANT, y - TICK, Stroke.Kind.CUT);
    }
  }

  private void ticks() {
    List<Piece> shown = scale.shown();
    long end = Math.round(shown.get(shown.size() - 1).to() * 10);
    long step = step(end);
    double free = Double.NEGATIVE_INFINITY;
    for (long at = 0; at <= end; at += step) {
      if (isShown(at / 10.0)) {
        free = tick(at, free);
      }
    }
  }

  /** The beginning of a phase in a part of the axis without a figure, where there is room. */
  private void tell(Piece piece, List<Double> begins) {
    boolean told =
        texts.stream().anyMatch(text -> piece.left() <= text.x() && text.x() <= piece.right());
    if (!told) {
      begins.stream()
          .filter(at -> piece.from() <= at && at <= piece.to())
          .map(at -> figure(Math.round(at * 10), piece.x(at)))
          .filter(this::isFree)
          .findFirst()
          .ifPresent(
              figure -> {
                line(figure.x(), y, figure.x(), y + TICK, Stroke.Kind.AXIS);
                texts.add(figure);
              });
    }
  }

  private boolean isFree(Text figure) {
    return texts.stream()
        .noneMatch(
            other ->
                figure.left() < other.left() + other.width() + APART
                    && other.left() < figure.left() + figure.width() + APART);
  }

  private boolean isShown(double moment) {
    return scale.shown().stream().anyMatch(one -> one.from() <= moment && moment <= one.to());
  }

  /** Ticks so far apart that their figures stand clear of each other. */
  private long step(long end) {
    for (long step : ROUND) {
      if (step * scale.perSecond() / 10 >= widest(end, step) + APART) {
        return step;
      }
    }
    return ROUND[ROUND.length - 1];
  }

  /** Width of the widest figure: a digit may be narrower than another. */
  private double widest(long end, long step) {
    String whole = say.clock(BigDecimal.valueOf(end / 10), hours).replaceAll("\\d", "0");
    return Typography.width(step % 10 == 0 ? whole : whole + ".0", size, false);
  }

  /** A tick, with its figure where that stands clear of the one before; up to where it reaches. */
  private double tick(long at, double free) {
    double x = scale.x(at / 10.0);
    line(x, y, x, y + TICK, Stroke.Kind.AXIS);
    Text figure = figure(at, x);
    if (figure.left() < free) {
      return free;
    }
    texts.add(figure);
    return figure.left() + figure.width() + APART;
  }

  private Text figure(long tenths, double x) {
    String clock = say.clock(BigDecimal.valueOf(tenths, 1), hours);
    return new Text(clock, x, y + height(), size, false, Text.Anchor.MIDDLE);
  }
}
