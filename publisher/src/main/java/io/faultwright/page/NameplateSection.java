package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * How a model number is read.
 *
 * @param where where the nameplate is
 * @param software where the version of the control software is found, if that is said
 * @param example a published model number, taken apart
 * @param segments the parts, left to right
 */
public record NameplateSection(
    String where, Optional<String> software, List<Fact> example, List<Segment> segments) {
  /**
   * A part of a model number.
   *
   * @param title what it says
   * @param codes code and meaning; empty for a size
   */
  public record Segment(String title, List<Fact> codes) {}
}
