package io.faultwright.layout;

import io.faultwright.layout.TimeScale.Piece;
import io.faultwright.layout.Timing.Lane;
import io.faultwright.layout.Timing.On;
import io.faultwright.layout.TimingDiagram.PlacedLane;
import java.util.ArrayList;
import java.util.List;

/** The step line of a lane: high exactly while it is on. */
final class LaneLines {
  private final TimeScale scale;
  private final double high;
  private final double low;

  LaneLines(TimeScale scale, double high, double low) {
    this.scale = scale;
    this.high = high;
    this.low = low;
  }

  PlacedLane of(Lane lane) {
    return new PlacedLane(
        lane.title(),
        high,
        low,
        scale.shown().stream().map(piece -> line(lane, piece)).toList(),
        scale.shown().stream().flatMap(piece -> filled(lane, piece).stream()).toList(),
        lane.pushes().stream().map(at -> new Point(scale.x(at), high)).toList());
  }

  private List<Point> line(Lane lane, Piece piece) {
    List<Point> line = new ArrayList<>();
    line.add(new Point(piece.left(), level(lane, piece.from())));
    for (On on : lane.on()) {
      step(line, piece, on.from(), low, high);
      step(line, piece, on.to(), high, low);
    }
    line.add(new Point(piece.right(), line.get(line.size() - 1).y()));
    return line;
  }

  /** A step within the piece; at its ends the line begins or ends at its level. */
  private static void step(
      List<Point> line, Piece piece, double moment, double before, double after) {
    if (moment > piece.from() && moment < piece.to()) {
      line.add(new Point(piece.x(moment), before));
      line.add(new Point(piece.x(moment), after));
    }
  }

  private double level(Lane lane, double moment) {
    return lane.on().stream().anyMatch(on -> on.from() <= moment && moment < on.to()) ? high : low;
  }

  private List<Box> filled(Lane lane, Piece piece) {
    List<Box> filled = new ArrayList<>();
    for (On on : lane.on()) {
      double from = Math.max(on.from(), piece.from());
      double to = Math.min(on.to(), piece.to());
      if (from < to) {
        filled.add(new Box(piece.x(from), high, piece.x(to) - piece.x(from), low - high));
      }
    }
    return filled;
  }
}
