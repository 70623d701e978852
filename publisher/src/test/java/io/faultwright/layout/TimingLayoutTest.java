package io.faultwright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.layout.TimeScale.Piece;
import io.faultwright.layout.Timing.Group;
import io.faultwright.layout.Timing.Lane;
import io.faultwright.layout.Timing.On;
import io.faultwright.layout.Timing.Stretch;
import io.faultwright.layout.TimingDiagram.PlacedLane;
import io.faultwright.layout.TimingDiagram.Stroke;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where things stand on a timing diagram. */
class TimingLayoutTest {
  private static final double NEAR = 1e-6;
  private static final String[] TITLES = {
    "Standby", "Draining", "Heating", "Releasing what lies on the plate", "Building", "Drip"
  };

  /** Seeded courses: from a few long phases to many, some of them short. */
  static Stream<Timing> timings() {
    return new Random(17).ints(120, 0, Integer.MAX_VALUE).mapToObj(seed -> varied(seed));
  }

  private static Timing varied(long seed) {
    Random random = new Random(seed);
    List<Stretch> phases = new ArrayList<>();
    double now = 0;
    int count = 1 + random.nextInt(14);
    for (int i = 0; i < count; i++) {
      double lasts = 1 + random.nextInt(random.nextBoolean() ? 20 : 1500);
      int kind = random.nextInt(TITLES.length);
      boolean stop = i == count - 1 && random.nextBoolean();
      phases.add(new Stretch(kind + 1, stop ? "Stop: FULL" : TITLES[kind], stop, now, now + lasts));
      now += lasts;
    }
    double end = now;
    List<Lane> outputs = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(6); i++) {
      outputs.add(
          new Lane(
              "Output number " + i + " of the walk-in freezer", on(phases, random), List.of()));
    }
    Lane push = new Lane("Reset button", List.of(), List.of(end / 2));
    return new Timing(
        "t",
        end,
        phases,
        List.of(new Group("Outputs", outputs), new Group("Inputs", List.of(push))));
  }

  private static List<On> on(List<Stretch> phases, Random random) {
    List<On> on = new ArrayList<>();
    for (Stretch phase : phases) {
      boolean apart = on.isEmpty() || on.get(on.size() - 1).to() < phase.from();
      if (apart && random.nextBoolean()) {
        on.add(new On(phase.from(), phase.to()));
      }
    }
    return on;
  }

  private static TimingDiagram of(Timing timing) {
    return TimingLayout.of(timing, Words.ENGLISH);
  }

  @ParameterizedTest
  @MethodSource("timings")
  void noTextStandsOverAnotherOrBesideThePage(Timing timing) {
    TimingDiagram diagram = of(timing);
    List<Text> texts = diagram.texts();
    for (int i = 0; i < texts.size(); i++) {
      Box box = texts.get(i).box();
      assertTrue(texts.get(i).size() >= 8, "large enough to read");
      assertTrue(box.x() >= 0 && box.right() <= diagram.width(), texts.get(i).toString());
      assertTrue(box.y() >= 0 && box.bottom() <= diagram.height(), texts.get(i).toString());
      for (int j = i + 1; j < texts.size(); j++) {
        assertFalse(box.overlaps(texts.get(j).box()), texts.get(i) + " over " + texts.get(j));
      }
    }
  }

  /** Looked at in the middle between any two moments at which something changes. */
  @ParameterizedTest
  @MethodSource("timings")
  void lanesAreHighExactlyWhileOn(Timing timing) {
    TimingDiagram diagram = of(timing);
    TimeScale scale = scale(timing);
    List<Lane> lanes = timing.groups().stream().flatMap(group -> group.lanes().stream()).toList();
    List<Double> moments = List.copyOf(changes(timing));
    for (int lane = 0; lane < lanes.size(); lane++) {
      PlacedLane placed = diagram.lanes().get(lane);
      for (int i = 1; i < moments.size(); i++) {
        double at = shown(scale, moments.get(i - 1), moments.get(i));
        boolean on = lanes.get(lane).on().stream().anyMatch(o -> o.from() <= at && at < o.to());
        double x = scale.x(at);
        assertEquals(
            on ? placed.high() : placed.low(),
            level(placed, x),
            NEAR,
            lanes.get(lane) + " at " + at);
        assertEquals(on, placed.filled().stream().anyMatch(b -> b.x() < x && x < b.right()));
      }
    }
  }

  /** A moment between two that is not cut out. */
  private static double shown(TimeScale scale, double from, double to) {
    double middle = (from + to) / 2;
    return scale.cuts().stream()
        .filter(cut -> cut.from() < middle && middle < cut.to())
        .map(cut -> (from + cut.from()) / 2)
        .findFirst()
        .orElse(middle);
  }

  private static double level(PlacedLane lane, double x) {
    for (List<Point> line : lane.lines()) {
      for (int i = 1; i < line.size(); i++) {
        if (line.get(i - 1).x() < x && x < line.get(i).x()) {
          assertEquals(line.get(i - 1).y(), line.get(i).y(), "it is level there");
          return line.get(i).y();
        }
      }
    }
    throw new AssertionError("no line at " + x);
  }

  private static TreeSet<Double> changes(Timing timing) {
    TreeSet<Double> changes = new TreeSet<>(List.of(0.0, timing.end()));
    timing.phases().forEach(one -> changes.add(one.from()));
    for (Group group : timing.groups()) {
      for (Lane lane : group.lanes()) {
        changes.addAll(lane.pushes());
        lane.on().forEach(on -> changes.addAll(List.of(on.from(), on.to())));
      }
    }
    return changes;
  }

  private static TimeScale scale(Timing timing) {
    return TimeScale.of(changes(timing), 124, 504 - 14 - 124);
  }

  @ParameterizedTest
  @MethodSource("timings")
  void boundariesStandWhereTheirPhasesBegin(Timing timing) {
    TimingDiagram diagram = of(timing);
    TimeScale scale = scale(timing);
    for (int i = 0; i < timing.phases().size(); i++) {
      Stretch phase = timing.phases().get(i);
      List<Box> boxes = diagram.phases().get(i).boxes();
      assertEquals(scale.x(phase.from()), boxes.get(0).x(), NEAR);
      assertEquals(scale.x(phase.to()), boxes.get(boxes.size() - 1).right(), NEAR);
      Stroke.Kind kind = phase.stop() ? Stroke.Kind.STOP : Stroke.Kind.BOUNDARY;
      double bottom = diagram.lanes().get(diagram.lanes().size() - 1).low();
      assertTrue(
          phase.from() == 0
              || diagram.strokes().stream()
                  .filter(stroke -> stroke.kind() == kind && stroke.to().y() >= bottom)
                  .anyMatch(stroke -> Math.abs(stroke.to().x() - boxes.get(0).x()) < NEAR),
          "a line through all lanes at " + phase);
    }
  }

  /** From left to right, evenly but for cuts, which leave out only what does not change. */
  @ParameterizedTest
  @MethodSource("timings")
  void timeRunsEvenlyButForQuietStretches(Timing timing) {
    TimeScale scale = scale(timing);
    TreeSet<Double> changes = changes(timing);
    assertEquals(124, scale.x(0), NEAR);
    assertEquals(490, scale.x(timing.end()), NEAR);
    for (Piece cut : scale.cuts()) {
      assertTrue(changes.subSet(cut.from(), true, cut.to(), true).isEmpty(), "nothing in " + cut);
      assertEquals(TimeScale.GAP, cut.right() - cut.left(), NEAR);
    }
    for (Piece piece : scale.shown()) {
      assertEquals(
          (piece.to() - piece.from()) * scale.perSecond(), piece.right() - piece.left(), NEAR);
    }
    long marks = of(timing).strokes().stream().filter(one -> one.kind() == Stroke.Kind.CUT).count();
    assertEquals(2L * scale.cuts().size(), marks, "two strokes for each cut");
    assertEquals(
        !scale.cuts().isEmpty(),
        of(timing).texts().stream().anyMatch(text -> text.content().contains("axis is cut")));
  }

  private static Timing simple(double... boundaries) {
    List<Stretch> phases = new ArrayList<>();
    for (int i = 1; i < boundaries.length; i++) {
      phases.add(new Stretch(i, "Phase " + i, false, boundaries[i - 1], boundaries[i]));
    }
    Lane lane = new Lane("Heater", List.of(new On(boundaries[0], boundaries[1])), List.of());
    return new Timing(
        "t",
        boundaries[boundaries.length - 1],
        phases,
        List.of(new Group("Outputs", List.of(lane))));
  }

  private static List<String> figures(Timing timing) {
    return of(timing).texts().stream()
        .map(Text::content)
        .filter(text -> text.matches("\\d+:[\\d.]+"))
        .toList();
  }

  @Test
  void ticksStandAtRoundTimes() {
    assertEquals(
        "[0:00, 0:10, 0:20, 0:30, 0:40, 0:50, 1:00, 1:10, 1:20]",
        figures(simple(0, 40, 88)).toString());
    assertEquals("[0:00, 0:00.1, 0:00.2, 0:00.3, 0:00.4]", figures(simple(0, 0.1, 0.4)).toString());
  }

  @Test
  void nothingIsCutWhereAllCanBeSeen() {
    assertEquals(List.of(), scale(simple(0, 60, 600)).cuts());
  }

  @Test
  void aLongQuietStretchIsCutBesideAShortOne() {
    TimeScale scale = scale(simple(0, 3, 3600));
    assertEquals(1, scale.cuts().size());
    assertTrue(scale.x(3) - scale.x(0) >= 1, "three seconds can be seen");
  }

  @Test
  void aPhaseTooNarrowForItsTitleIsExplained() {
    List<String> texts = of(simple(0, 10, 600, 1200)).texts().stream().map(Text::content).toList();
    assertTrue(texts.contains("1"), texts.toString());
    assertTrue(texts.contains("1 Phase 1"), texts.toString());
    assertEquals(1, texts.stream().filter("2 Phase 2"::equals).count());
  }
}
