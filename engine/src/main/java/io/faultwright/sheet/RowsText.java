package io.faultwright.sheet;

import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows of a table as they stand in the text of its file: lines, indentation, comments. */
final class RowsText {
  private final String path;
  private final String text;
  private final Written document;
  private final Written table;
  private final Written rows;

  RowsText(SourceFile file, String reading) {
    this.path = file.path();
    this.text = file.text();
    this.document = Written.of(file).orElseThrow();
    List<String> keys = WrittenTable.path(reading);
    this.table = find(keys.subList(0, keys.size() - 1));
    this.rows = find(keys);
  }

  private Written find(List<String> keys) {
    Optional<Written> found = Optional.of(document);
    for (String key : keys) {
      found = found.flatMap(one -> one.find(key));
    }
    return found.orElseThrow();
  }

  /** The value of {@code rows}. */
  Written all() {
    return rows;
  }

  /** A row, without the hyphen in front of it. */
  Written row(int index) {
    return rows.parts().get(index);
  }

  /** Whether each row begins on a line of its own, with a hyphen. */
  boolean isBlock() {
    return !rows.flow();
  }

  /** Whether the table stands in braces, so that its rows must stand in brackets. */
  boolean isTableInBraces() {
    return table.flow();
  }

  /** How far the key {@code rows} is indented. */
  int indentation() {
    Written key = table.parts().get(table.parts().indexOf(rows) - 1);
    return key.start() - lineStart(key.start());
  }

  /** What stands in front of the hyphen of the rows. */
  String hyphenIndentation() {
    String line = text.substring(lineStart(row(0).start()), row(0).start());
    return line.substring(0, line.indexOf('-'));
  }

  /** Where the first comment line directly in front of a row begins, or the row's own line. */
  int leadingStart(int index) {
    int start = lineStart(row(index).start());
    while (start > 0 && isComment(lineStart(start - 1))) {
      start = lineStart(start - 1);
    }
    return start;
  }

  private boolean isComment(int lineStart) {
    return text.substring(lineStart, lineEnd(lineStart)).strip().startsWith("#");
  }

  /** Where the line behind a row begins. */
  int lineAfter(int index) {
    return Math.min(text.length(), lineEnd(row(index).end()) + 1);
  }

  int lineStart(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  int lineEnd(int at) {
    int feed = text.indexOf('\n', at);
    return feed < 0 ? text.length() : feed;
  }

  /** The place in front of a text where the blanks before it begin. */
  int blanksBefore(int at) {
    int start = at;
    while (start > 0 && text.charAt(start - 1) == ' ') {
      start--;
    }
    return start;
  }

  boolean endsWithLineFeed() {
    return text.endsWith("\n");
  }

  int length() {
    return text.length();
  }

  /** Every comment in a stretch. */
  List<Remark> comments(int from, int to, boolean lost) {
    List<Remark> comments = new ArrayList<>();
    int at = from;
    while (at < to) {
      int sign = text.indexOf('#', at);
      if (sign < 0 || sign >= to) {
        break;
      }
      boolean comment = startsWord(sign) && !insideText(sign);
      if (comment) {
        comments.add(new Remark(place(sign), text.substring(sign, lineEnd(sign)), lost));
      }
      at = comment ? lineEnd(sign) : sign + 1;
    }
    return comments;
  }

  private boolean startsWord(int at) {
    return at == 0 || Character.isWhitespace(text.charAt(at - 1));
  }

  private boolean insideText(int at) {
    return document.texts().anyMatch(one -> one.start() <= at && at < one.end());
  }

  private Place place(int at) {
    int line = 1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
    int column = 1 + text.codePointCount(lineStart(at), at);
    return new Place(path, line, column, lineEnd(at) - at);
  }
}
