package io.faultwright.report;

import io.faultwright.source.Place;
import io.faultwright.source.Sources;

/** A line of a file with carets under the place that is meant. */
final class Snippet {
  /** Room for the text; longer lines are cut around the carets. */
  private static final int ROOM = 100;

  private static final int LEAD = 30;

  private final Sources sources;
  private final Ink ink;

  Snippet(Sources sources, Ink ink) {
    this.sources = sources;
    this.ink = ink;
  }

  /** The place in words, then its line and carets; only the place where the file is unknown. */
  String of(Place place) {
    String line = sources.line(place);
    String head = "  " + ink.frame(place.toString()) + "\n";
    return line.isBlank() ? head : head + lines(place, line);
  }

  private String lines(Place place, String line) {
    int[] characters = line.codePoints().toArray();
    int start = Math.min(place.column() - 1, characters.length);
    int end = Math.min(start + place.length(), characters.length);
    int from = characters.length > ROOM ? Math.max(0, start - LEAD) : 0;
    int to = Math.min(characters.length, from + ROOM);
    String before = text(characters, from, start);
    String marked = text(characters, start, Math.min(end, to));
    String shown =
        (from > 0 ? "…" : "") + text(characters, from, to) + (to < characters.length ? "…" : "");
    return numbered(place.line(), shown)
        + carets(place.line(), Columns.width(before) + (from > 0 ? 1 : 0), Columns.width(marked));
  }

  private String numbered(int number, String text) {
    return ink.frame(margin(Integer.toString(number))) + Columns.printable(text) + "\n";
  }

  private String carets(int number, int indent, int width) {
    String gutter = margin(" ".repeat(Integer.toString(number).length()));
    return ink.frame(gutter) + " ".repeat(indent) + ink.bad("^".repeat(Math.max(1, width))) + "\n";
  }

  private static String margin(String number) {
    return " ".repeat(Math.max(0, 5 - number.length())) + number + " | ";
  }

  private static String text(int[] characters, int from, int to) {
    return new String(characters, from, Math.max(0, to - from));
  }
}
