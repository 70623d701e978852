package io.faultwright.syntax;

import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Turns counts of UTF-16 units from the beginning of a file into places. */
final class Offsets {
  private final String path;
  private final String text;
  private final int[] starts;

  Offsets(SourceFile file) {
    this.path = file.path();
    this.text = file.text();
    this.starts =
        IntStream.concat(
                IntStream.of(0),
                IntStream.range(0, text.length())
                    .filter(i -> text.charAt(i) == '\n')
                    .map(i -> i + 1))
            .toArray();
  }

  /** A stretch of text, cut off at the end of its first line. */
  Place place(long offset, long length) {
    int from = (int) Math.max(0, Math.min(offset, text.length()));
    int to = (int) Math.min(from + Math.max(0, length), end(from));
    int line = line(from);
    return new Place(
        path,
        line + 1,
        1 + text.codePointCount(starts[line], from),
        text.codePointCount(from, Math.max(from, to)));
  }

  private int line(int offset) {
    int found = Arrays.binarySearch(starts, offset);
    return found >= 0 ? found : -found - 2;
  }

  private int end(int offset) {
    int end = text.indexOf('\n', offset);
    return end < 0 ? text.length() : end;
  }

  /** Whether nothing follows a place but blanks, or a word of JSON that was cut off. */
  boolean isAtTheEnd(Place place) {
    String rest = text.substring(offset(place)).strip();
    return Stream.of("true", "false", "null").anyMatch(word -> word.startsWith(rest));
  }

  private int offset(Place place) {
    return text.offsetByCodePoints(starts[place.line() - 1], place.column() - 1);
  }

  /** What stands at a place, in words. */
  String found(Place place) {
    int at = offset(place);
    return at >= end(at)
        ? "the end of a line"
        : "`" + Character.toString(text.codePointAt(at)) + "`";
  }
}
