package io.faultwright.report;

import io.faultwright.source.Place;
import java.util.Optional;

/**
 * What a report for a forge tells beside what was found.
 *
 * @param folder path from the top of the repository to the knowledge base, ended by a slash; empty
 *     where paths count from the knowledge base
 * @param version of the program; absent where it was not built into a jar
 * @param pages address below which the pages of the findings stand; absent where they stand nowhere
 */
public record Surroundings(String folder, Optional<String> version, Optional<String> pages) {
  /** Nothing but the findings. */
  public static final Surroundings NONE = new Surroundings("", Optional.empty(), Optional.empty());

  /** A file as the repository calls it. */
  String path(Place place) {
    return folder + place.file();
  }

  /** A place as an editor opens it. */
  String words(Place place) {
    return path(place) + ":" + place.line() + ":" + place.column();
  }
}
