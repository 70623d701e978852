package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;

/** Asserts that problems point at something a person can find. */
final class Places {
  private Places() {}

  static void assertExist(Sources sources, List<Problem> problems) {
    for (Problem problem : problems) {
      assertFalse(problem.places().isEmpty(), "no place: " + problem);
      assertFalse(problem.message().isBlank(), "no message: " + problem);
      problem.places().forEach(place -> assertExists(sources, place, problem));
    }
  }

  private static void assertExists(Sources sources, Place place, Problem problem) {
    SourceFile file =
        sources.find(place.file()).orElseThrow(() -> new AssertionError("no file: " + problem));
    List<String> lines = file.text().lines().toList();
    assertTrue(place.line() >= 1 && place.line() <= Math.max(1, lines.size()), "line: " + problem);
    String line = lines.isEmpty() ? "" : lines.get(place.line() - 1);
    int end = line.codePointCount(0, line.length()) + 1;
    assertTrue(place.column() >= 1 && place.column() <= end, "column: " + problem);
    int last = place.column() + place.length() - 1;
    assertTrue(place.length() == 1 || last <= end, "length: " + problem + place.length());
  }
}
