package io.faultwright.layout;

import io.faultwright.layout.TimeScale.Piece;
import io.faultwright.layout.Timing.Stretch;
import io.faultwright.layout.TimingDiagram.PlacedPhase;
import io.faultwright.layout.TimingDiagram.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The phases as a band: by number and title where both fit, else by number; a number that does not
 * fit stands above.
 */
final class PhaseBand {
  private static final double HEIGHT = 16;
  private static final double PADDING = 3;
  private static final double LEADER = 5;

  private final TimeScale scale;
  private final double size;
  private final double left;
  private final double right;
  private final List<PlacedPhase> phases = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();
  private final SortedMap<Integer, String> untitled = new TreeMap<>();

  /** Stops whose titles stand above the band. */
  private final Set<Stretch> named = new HashSet<>();

  private final double top;
  private final double bottom;

  private record Callout(Stretch phase, Text text, double at) {}

  /**
   * @param y where there is room for it
   * @param size of its texts
   */
  PhaseBand(List<Stretch> phases, TimeScale scale, double y, double size) {
    this.scale = scale;
    this.size = size;
    List<Piece> shown = scale.shown();
    this.left = shown.get(0).left();
    this.right = shown.get(shown.size() - 1).right();
    List<Stretch> small = phases.stream().filter(one -> !fits(one, least(one))).toList();
    this.top = small.isEmpty() ? y : y + Math.ceil(size * 1.2) + LEADER;
    this.bottom = top + HEIGHT;
    callouts(small);
    phases.forEach(this::place);
  }

  double bottom() {
    return bottom;
  }

  List<PlacedPhase> phases() {
    return phases;
  }

  List<Stroke> strokes() {
    return strokes;
  }

  List<Text> texts() {
    return texts;
  }

  /** Titles that somewhere stand neither on the band nor above it, by number. */
  SortedMap<Integer, String> untitled() {
    return untitled;
  }

  private static String number(Stretch one) {
    return Integer.toString(one.number());
  }

  /** The least that has to stand on the band: of a stop, what it is. */
  private static String least(Stretch one) {
    return one.stop() ? title(one) : number(one);
  }

  private static String title(Stretch one) {
    return one.number() + " " + one.title();
  }

  private boolean fits(Stretch one, String text) {
    return widest(one).width() >= Typography.width(text, size, one.stop()) + 2 * PADDING;
  }

  /** The part of it that is widest, where the axis is cut within it. */
  private Box widest(Stretch one) {
    return boxes(one).stream().max(Comparator.comparing(Box::width)).orElseThrow();
  }

  private List<Box> boxes(Stretch one) {
    List<Box> boxes = new ArrayList<>();
    for (Piece piece : scale.shown()) {
      double from = Math.max(one.from(), piece.from());
      double to = Math.min(one.to(), piece.to());
      if (from < to) {
        boxes.add(new Box(piece.x(from), top, piece.x(to) - piece.x(from), HEIGHT));
      }
    }
    return boxes;
  }

  private void place(Stretch one) {
    List<Box> boxes = boxes(one);
    phases.add(new PlacedPhase(one.stop(), boxes));
    Stroke.Kind kind = one.stop() ? Stroke.Kind.STOP : Stroke.Kind.BAND;
    for (Box box : boxes) {
      line(kind, box.x(), top, box.right(), top);
      line(kind, box.x(), bottom, box.right(), bottom);
    }
    upright(kind, boxes.get(0).x());
    upright(kind, boxes.get(boxes.size() - 1).right());
    boolean titled = fits(one, title(one));
    if (!titled && !named.contains(one)) {
      untitled.put(one.number(), one.title());
    }
    if (titled || fits(one, number(one))) {
      double middle = widest(one).centreX();
      texts.add(text(titled ? title(one) : number(one), middle, bottom - 4.5, one.stop()));
    }
  }

  private void upright(Stroke.Kind kind, double x) {
    line(kind, x, top, x, bottom);
  }

  private void line(Stroke.Kind kind, double x1, double y1, double x2, double y2) {
    strokes.add(new Stroke(kind, new Point(x1, y1), new Point(x2, y2)));
  }

  private Text text(String words, double middle, double baseline, boolean bold) {
    return new Text(words, middle, baseline, size, bold, Text.Anchor.MIDDLE);
  }

  /** Numbers above the band, moved apart where they would stand over each other. */
  private void callouts(List<Stretch> small) {
    List<Callout> open = new ArrayList<>();
    double free = left;
    for (Stretch one : small) {
      double at = widest(one).centreX();
      Text text = text(least(one), at, top - LEADER - 2, one.stop());
      double x = Math.max(at, free + text.width() / 2);
      open.add(new Callout(one, text.shifted(x - at, 0), at));
      free = x + text.width() / 2 + PADDING;
    }
    double limit = right;
    for (int i = open.size() - 1; i >= 0; i--) {
      limit = callout(open.get(i), limit);
    }
  }

  /** Sets a number no further to the right than a limit; where the one before has to end. */
  private double callout(Callout one, double limit) {
    double half = one.text().width() / 2;
    double x = Math.min(one.text().x(), limit - half);
    if (x - half < left) {
      return limit;
    }
    texts.add(one.text().shifted(x - one.text().x(), 0));
    if (one.phase().stop()) {
      named.add(one.phase());
    }
    strokes.add(
        new Stroke(Stroke.Kind.LEADER, new Point(x, top - LEADER), new Point(one.at(), top)));
    return x - half - PADDING;
  }
}
