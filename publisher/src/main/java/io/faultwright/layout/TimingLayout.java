package io.faultwright.layout;

import io.faultwright.layout.Timing.Group;
import io.faultwright.layout.Timing.Lane;
import io.faultwright.layout.Timing.Stretch;
import io.faultwright.layout.TimingDiagram.PlacedLane;
import io.faultwright.layout.TimingDiagram.Stroke;
import io.faultwright.words.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** Gives the parts of a timing diagram their places, as wide as the text of a page of paper. */
public final class TimingLayout {
  static final double WIDTH = 504;

  /** No text is smaller; it is printed as large as it is drawn. */
  static final double SIZE = 8.5;

  private static final double LABEL = 116;
  private static final double LEFT = 124;
  private static final double EDGE = 14;
  private static final double LEADING = 10;
  private static final double RISE = 10;
  private static final double APART = 12;

  private final Timing timing;
  private final Words say;
  private final TimeScale scale;
  private final List<PlacedLane> lanes = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();
  private double y;

  private TimingLayout(Timing timing, Words say) {
    this.timing = timing;
    this.say = say;
    this.scale = TimeScale.of(changes(timing), LEFT, WIDTH - EDGE - LEFT);
  }

  /** The diagram. */
  public static TimingDiagram of(Timing timing, Words say) {
    return new TimingLayout(timing, say).diagram();
  }

  private static SortedSet<Double> changes(Timing timing) {
    SortedSet<Double> changes = new TreeSet<>(List.of(timing.end()));
    timing.phases().forEach(one -> changes.addAll(List.of(one.from(), one.to())));
    for (Group group : timing.groups()) {
      for (Lane lane : group.lanes()) {
        changes.addAll(lane.pushes());
        lane.on().forEach(on -> changes.addAll(List.of(on.from(), on.to())));
      }
    }
    return changes;
  }

  private TimingDiagram diagram() {
    PhaseBand band = new PhaseBand(timing.phases(), scale, 2, SIZE);
    label(say.say("Phase"), true, band.bottom() - 4.5);
    y = band.bottom() + 4;
    timing.groups().stream().filter(group -> !group.lanes().isEmpty()).forEach(this::group);
    y += 4;
    boundaries(band.bottom());
    boolean hours = Words.withHours(BigDecimal.valueOf(timing.end()));
    TimeAxis axis =
        new TimeAxis(
            scale, say, y, SIZE, hours, timing.phases().stream().map(Stretch::from).toList());
    label(hours ? say.say("Time, h:min:s") : say.say("Time, min:s"), false, y + axis.height());
    y += axis.height() + 4;
    strokes.addAll(axis.strokes());
    texts.addAll(axis.texts());
    strokes.addAll(band.strokes());
    texts.addAll(band.texts());
    notes(band.untitled());
    return new TimingDiagram(
        WIDTH, Math.ceil(y + 2), timing.title(), band.phases(), lanes, strokes, texts);
  }

  private void label(String words, boolean bold, double baseline) {
    texts.add(new Text(words, 0, baseline, SIZE, bold, Text.Anchor.START));
  }

  private void group(Group group) {
    y += LEADING + 2;
    label(group.title(), true, y);
    y += 2;
    group.lanes().forEach(this::lane);
  }

  /** Its title stands at the left, in the middle of its height. */
  private void lane(Lane lane) {
    List<String> lines = new Wrap(SIZE, false).balanced(lane.title(), LABEL, 3);
    double height = Math.max(RISE, (lines.size() - 1) * LEADING + 6) + 6;
    double low = y + (height + RISE) / 2;
    double first = y + (height - (lines.size() - 1) * LEADING) / 2 + 3;
    for (int i = 0; i < lines.size(); i++) {
      label(lines.get(i), false, first + i * LEADING);
    }
    lanes.add(new LaneLines(scale, low - RISE, low).of(lane));
    y += height;
  }

  /** Each phase begins at a line through all lanes; a stop at a heavy one. */
  private void boundaries(double top) {
    for (Stretch one : timing.phases()) {
      Stroke.Kind kind = one.stop() ? Stroke.Kind.STOP : Stroke.Kind.BOUNDARY;
      if (one.from() > 0) {
        double x = scale.x(one.from());
        strokes.add(new Stroke(kind, new Point(x, top), new Point(x, y)));
      }
    }
  }

  /** What the numbers mean, and that the axis is cut. */
  private void notes(Map<Integer, String> untitled) {
    double x = LEFT;
    for (Map.Entry<Integer, String> one : untitled.entrySet()) {
      String words = one.getKey() + " " + one.getValue();
      double width = Typography.width(words, SIZE, false);
      if (x > LEFT && x + width > WIDTH) {
        y += LEADING + 1;
        x = LEFT;
      }
      texts.add(new Text(words, x, y + LEADING, SIZE, false, Text.Anchor.START));
      x += width + APART;
    }
    y += untitled.isEmpty() ? 0 : LEADING + 1;
    if (!scale.cuts().isEmpty()) {
      note(say.say("//: the axis is cut where nothing changes for long."));
    }
  }

  private void note(String words) {
    for (String line : new Wrap(SIZE, false).lines(words, WIDTH - LEFT, 3)) {
      texts.add(new Text(line, LEFT, y + LEADING, SIZE, false, Text.Anchor.START));
      y += LEADING + 1;
    }
  }
}
