package io.faultwright.model;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * How a model number is read.
 *
 * @param where where the technician finds the nameplate
 * @param software where the technician finds the version of the control software, if that is said
 * @param segments the parts of a model number, left to right
 */
public record Nameplate(String where, Optional<String> software, List<Segment> segments) {
  public Nameplate {
    segments = List.copyOf(segments);
  }

  /** A part of a model number. */
  public sealed interface Segment {}

  /** Fixed characters. */
  public record Literal(String text) implements Segment {}

  /**
   * A code that stands for a family or an option's value.
   *
   * @param attribute {@code family} or an option's id
   * @param codes code on the nameplate to family or value id
   */
  public record Coded(String attribute, SortedMap<String, String> codes) implements Segment {
    public Coded {
      codes = Sorted.copy(codes);
    }
  }

  /** A run of digits that nothing depends on (a size). */
  public record Digits(int count) implements Segment {}
}
