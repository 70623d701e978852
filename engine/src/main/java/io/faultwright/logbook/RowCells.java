package io.faultwright.logbook;

import java.util.Arrays;
import java.util.stream.Stream;

/**
 * Where the cells of a row stand. A cell in quotes may hold the separator, and quotes written
 * twice; it ends on its line.
 */
final class RowCells {
  private static final char QUOTE = '"';

  private final char separator;
  private String row = "";
  private int[] from = new int[8];
  private int[] to = new int[8];
  private int count;
  private boolean open;

  RowCells(char separator) {
    this.separator = separator;
  }

  /** What separates cells: a comma, a semicolon or a tab, whichever a header has most of. */
  static char separator(String header) {
    return Stream.of(',', ';', '\t')
        .max((a, b) -> Long.compare(often(header, a), often(header, b)))
        .filter(most -> often(header, most) > often(header, ','))
        .orElse(',');
  }

  private static long often(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }

  /** Goes on to a row; false where a quote is not closed. */
  boolean next(String line) {
    row = line;
    count = 0;
    open = false;
    int start = 0;
    for (int at = 0; at <= line.length(); at++) {
      if (at == line.length() || line.charAt(at) == separator && !open) {
        add(start, at);
        start = at + 1;
      } else if (line.charAt(at) == QUOTE) {
        open = !open;
      }
    }
    return !open;
  }

  private void add(int start, int end) {
    if (count == from.length) {
      from = Arrays.copyOf(from, 2 * count);
      to = Arrays.copyOf(to, 2 * count);
    }
    int first = start;
    int last = end;
    while (first < last && row.charAt(first) == ' ') {
      first++;
    }
    while (last > first && row.charAt(last - 1) == ' ') {
      last--;
    }
    if (last - first == 2 && row.startsWith("\"\"", first)) {
      last = first;
    }
    from[count] = first;
    to[count] = last;
    count++;
  }

  int count() {
    return count;
  }

  int from(int cell) {
    return from[cell];
  }

  int to(int cell) {
    return to[cell];
  }

  boolean isEmpty(int cell) {
    return cell >= count || from[cell] == to[cell];
  }

  /** Whether a cell is written exactly so. */
  boolean is(int cell, String written) {
    int length = to[cell] - from[cell];
    return length == written.length() && row.startsWith(written, from[cell]);
  }

  /** A cell as it is written, with its quotes. */
  String written(int cell) {
    return row.substring(from[cell], to[cell]);
  }

  /** What a cell says. */
  String text(int cell) {
    String text = written(cell);
    boolean quoted = text.length() > 1 && text.charAt(0) == QUOTE;
    return quoted ? text.substring(1, text.length() - 1).replace("\"\"", "\"").strip() : text;
  }
}
