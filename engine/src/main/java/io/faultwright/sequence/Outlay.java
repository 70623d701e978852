package io.faultwright.sequence;

/**
 * Something that has to be done before a check and is done once on the way: a reading taken, gauges
 * connected.
 *
 * @param minutes how long it takes
 * @param weighted what it counts for
 */
public record Outlay(double minutes, double weighted) {
  public Outlay {
    if (!(minutes >= 0 && weighted >= 0)) {
      throw new IllegalArgumentException("an outlay is not negative");
    }
  }
}
