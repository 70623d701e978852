package io.faultwright.diagnostic;

import io.faultwright.source.Place;
import java.util.Comparator;
import java.util.List;

/**
 * Something that makes the input unreadable.
 *
 * @param places where it stands, most telling first; empty only where no file is concerned
 * @param message what was found and what was expected: lower case, no full stop, names in backticks
 * @param help the cure, or the empty string
 */
public record Problem(List<Place> places, String message, String help)
    implements Comparable<Problem> {
  private static final Comparator<Problem> ORDER =
      Comparator.comparing((Problem problem) -> problem.places.isEmpty() ? 0 : 1)
          .thenComparing(problem -> problem.places.isEmpty() ? "" : problem.places.get(0).file())
          .thenComparing(problem -> problem.places.isEmpty() ? 0 : problem.places.get(0).line())
          .thenComparing(problem -> problem.places.isEmpty() ? 0 : problem.places.get(0).column())
          .thenComparing(Problem::message);

  public Problem {
    places = List.copyOf(places);
  }

  public static Problem at(Place place, String message, String help) {
    return new Problem(List.of(place), message, help);
  }

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }
}
