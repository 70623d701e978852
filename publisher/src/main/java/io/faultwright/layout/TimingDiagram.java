package io.faultwright.layout;

import java.util.List;

/**
 * A timing diagram with coordinates, in points: time runs to the right, phases stand on top, and
 * each lane is high while something is so.
 *
 * @param width over all
 * @param height over all
 * @param title what it shows, for those who do not see it
 * @param phases parts of the band on top, first to last
 * @param lanes from top to bottom
 * @param strokes all other lines
 * @param texts lines of text
 */
public record TimingDiagram(
    double width,
    double height,
    String title,
    List<PlacedPhase> phases,
    List<PlacedLane> lanes,
    List<Stroke> strokes,
    List<Text> texts) {
  public TimingDiagram {
    phases = List.copyOf(phases);
    lanes = List.copyOf(lanes);
    strokes = List.copyOf(strokes);
    texts = List.copyOf(texts);
  }

  /**
   * A phase on the band.
   *
   * @param stop whether the machine has stopped in it
   * @param boxes one; more where the axis is cut within it
   */
  public record PlacedPhase(boolean stop, List<Box> boxes) {}

  /**
   * A lane.
   *
   * @param title what it shows
   * @param high where its line runs while it is so
   * @param low where its line runs else
   * @param lines step lines, one for each part of the axis
   * @param filled below the line while it is so
   * @param pushes tips of arrows
   */
  public record PlacedLane(
      String title,
      double high,
      double low,
      List<List<Point>> lines,
      List<Box> filled,
      List<Point> pushes) {}

  /** A line. */
  public record Stroke(Kind kind, Point from, Point to) {
    /** Lines, by meaning. */
    public enum Kind {
      /** The edge of a phase on the band. */
      BAND,
      /** The edge of a stop on the band, and its beginning through all lanes. */
      STOP,
      /** The beginning of a phase through all lanes. */
      BOUNDARY,
      /** From a phase to its number above the band. */
      LEADER,
      /** The axis of time with its ticks. */
      AXIS,
      /** A mark that the axis is cut. */
      CUT
    }
  }
}
