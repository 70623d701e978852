package io.faultwright.find;

/** A text short enough for a line or two under a result. */
final class Line {
  private static final int LONGEST = 120;

  private Line() {}

  /** The text on one line, cut between words where it is long. */
  static String of(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    String start = line.substring(0, line.offsetByCodePoints(0, LONGEST));
    int space = start.lastIndexOf(' ');
    return (space > LONGEST / 2 ? start.substring(0, space) : start) + " …";
  }
}
