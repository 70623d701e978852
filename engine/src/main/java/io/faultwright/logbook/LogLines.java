package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.Place;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The lines of a log, one after the other, and what is wrong with some of them. The same mistake is
 * kept once, and only so many of different ones.
 */
final class LogLines {
  private static final int MOST = 20;
  private static final int FARTHEST = 50;

  private final String path;
  private final BufferedReader in;
  private final Problems problems = new Problems();
  private final Set<String> messages = new HashSet<>();
  private final SortedMap<Integer, String> excerpt = new TreeMap<>();
  private String text = "";
  private int number;

  LogLines(String path, BufferedReader in) {
    this.path = path;
    this.in = in;
  }

  /** The next line; at the end everything that was wrong is thrown. */
  Optional<String> next() {
    try {
      String line = in.readLine();
      if (line == null) {
        refuse();
        return Optional.empty();
      }
      number++;
      text = number == 1 && line.startsWith("\uFEFF") ? line.substring(1) : line;
      return Optional.of(text);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /**
   * The number of a line like that among the next ones; for what will be refused, since what was
   * looked through is not read any more.
   */
  OptionalInt ahead(Predicate<String> like) {
    try {
      for (int found = number + 1; found <= number + FARTHEST; found++) {
        String line = in.readLine();
        if (line != null && like.test(line)) {
          return OptionalInt.of(found);
        }
      }
      return OptionalInt.empty();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  String path() {
    return path;
  }

  /** The number of the present line, from 1. */
  int number() {
    return number;
  }

  /** A place in the present line, by places in its text, the first of which is 0. */
  Place place(int from, int to) {
    int column = text.codePointCount(0, from) + 1;
    return new Place(path, Math.max(1, number), column, text.codePointCount(from, to));
  }

  /** Something is wrong in the present line. */
  void wrong(int from, int to, String message, String help) {
    keep(Problem.at(place(from, to), message, help));
  }

  /** Something is wrong at a place of the present line. */
  void wrong(Place place, String message, String help) {
    keep(Problem.at(place, message, help));
  }

  /** Keeps what was found in the present line. */
  void keep(Problems found) {
    found.sorted().forEach(this::keep);
  }

  private void keep(Problem problem) {
    if (messages.add(problem.message())) {
      problems.add(problem);
      excerpt.put(number, text);
    }
    if (messages.size() >= MOST) {
      refuse();
    }
  }

  /** Throws what was wrong so far, if anything was. */
  void refuse() {
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted(), Sources.excerpt(path, excerpt));
    }
  }
}
