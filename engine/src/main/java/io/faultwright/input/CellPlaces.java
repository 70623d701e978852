package io.faultwright.input;

import io.faultwright.source.Place;
import java.util.List;

/** Where the cells of a row stand, one after the other; a quoted cell may run over lines. */
final class CellPlaces {
  private final int first;
  private final List<String> lines;
  private final char separator;
  private int line;
  private int at;

  /**
   * Begins a row.
   *
   * @param line where the row begins, from 1
   * @param lines of the row
   */
  CellPlaces(int line, List<String> lines, char separator) {
    this.first = line;
    this.lines = lines;
    this.separator = separator;
    this.line = line;
  }

  /** The place of the next cell. */
  Place next(String file) {
    int startLine = line;
    int start = at;
    boolean quoted = false;
    while (line - first < lines.size()) {
      String text = lines.get(line - first);
      for (; at < text.length() && (quoted || text.charAt(at) != separator); at++) {
        quoted ^= text.charAt(at) == '"';
      }
      if (!quoted) {
        break;
      }
      line++;
      at = 0;
    }
    Place place = place(file, startLine, start);
    at++;
    return place;
  }

  private Place place(String file, int startLine, int start) {
    String text = startLine - first < lines.size() ? lines.get(startLine - first) : "";
    int from = Math.min(start, text.length());
    int to = startLine == line ? Math.max(from, Math.min(at, text.length())) : text.length();
    int column = text.codePointCount(0, from) + 1;
    return new Place(file, startLine, column, text.codePointCount(from, to));
  }
}
