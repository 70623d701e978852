package io.faultwright.syntax;

import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;

/** Turns the marks of the YAML library into places of a file. */
final class Lines {
  private static final Pattern ESCAPE = Pattern.compile("\\\\[xuU]");

  private final String path;
  private final List<String> lines;

  Lines(SourceFile file) {
    this.path = file.path();
    this.lines = file.text().lines().toList();
  }

  /** The stretch between two marks, cut off at the end of its first line. */
  Place between(Mark start, Mark end) {
    boolean sameLine = start.getLine() == end.getLine();
    int length = (sameLine ? end.getColumn() : lineLength(start.getLine())) - start.getColumn();
    return place(start.getLine(), start.getColumn(), length);
  }

  /** One character at a mark. */
  Place at(Mark mark) {
    return place(mark.getLine(), mark.getColumn(), 1);
  }

  /**
   * A place by line and column counted from 0, moved into the file where it lies beyond its end.
   */
  Place place(int line, int column, int length) {
    return line < lines.size()
        ? new Place(path, line + 1, Math.min(column, lineLength(line)) + 1, length)
        : new Place(path, Math.max(1, lines.size()), lineLength(lines.size() - 1) + 1, 1);
  }

  /** A mark at the first numbered escape after a mark; the mark itself where there is none. */
  Mark firstEscape(Mark after) {
    int column = after.getColumn();
    for (int line = after.getLine(); line < lines.size(); line++) {
      Matcher escape = ESCAPE.matcher(text(line));
      if (escape.find(Math.min(column, text(line).length()))) {
        int at = text(line).codePointCount(0, escape.start());
        return new Mark(path, 0, line, at, new int[0], 0);
      }
      column = 0;
    }
    return after;
  }

  /** The text of a line counted from 0; empty outside the file. */
  String text(int line) {
    return line >= 0 && line < lines.size() ? lines.get(line) : "";
  }

  private int lineLength(int line) {
    String text = text(line).stripTrailing();
    return text.codePointCount(0, text.length());
  }
}
