package io.faultwright.logbook;

import io.faultwright.resolve.Told;
import io.faultwright.source.Place;

/**
 * One thing that a log says.
 *
 * @param file the log
 * @param step at which a controller takes it in
 * @param said what it says
 * @param line on which it stands
 * @param column in which it begins
 * @param length characters
 */
public record Entry(String file, long step, Said said, int line, int column, int length) {
  /** Where it stands. */
  public Place place() {
    return new Place(file, line, column, length);
  }

  /** What it says. */
  public Told told() {
    return said.told();
  }
}
