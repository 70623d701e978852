package io.faultwright.render.text;

import io.faultwright.report.Columns;
import java.util.ArrayList;
import java.util.List;

/** Lines of plain text, none wider than a mail shows without breaking it. */
final class Lines {
  /** Columns of a line; RFC 5322, section 2.1.1, asks for no more than 78. */
  static final int WIDTH = 78;

  private final StringBuilder text = new StringBuilder();

  /** An empty line. */
  Lines gap() {
    text.append('\n');
    return this;
  }

  /** A heading with an empty line above it. */
  Lines heading(String words) {
    List<String> lines = wrapped(words, WIDTH);
    gap();
    lines.forEach(line -> text.append(line).append('\n'));
    int longest = lines.stream().mapToInt(Columns::width).max().orElse(0);
    text.append("-".repeat(longest)).append('\n');
    return this;
  }

  /** A paragraph, so many columns from the left. */
  Lines paragraph(int indent, String words) {
    return hanging(" ".repeat(indent), words);
  }

  /** A paragraph whose further lines stand below the first one's text. */
  Lines hanging(String label, String words) {
    String margin = " ".repeat(Columns.width(label));
    String start = label;
    for (String line : wrapped(words, WIDTH - margin.length())) {
      text.append((start + line).stripTrailing()).append('\n');
      start = margin;
    }
    return this;
  }

  private static List<String> wrapped(String words, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Columns.printable(words.replaceAll("\\s+", " ").strip()).split(" ")) {
      for (String piece : pieces(word, width)) {
        boolean first = line.isEmpty();
        if (!first && Columns.width(line.toString()) + 1 + Columns.width(piece) > width) {
          lines.add(line.toString());
          line.setLength(0);
          first = true;
        }
        line.append(first ? "" : " ").append(piece);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /** A word that is wider than a line, in parts that are not. */
  private static List<String> pieces(String word, int width) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (int at = 0; at < word.length(); ) {
      String next = Character.toString(word.codePointAt(at));
      if (Columns.width(piece + next) > width) {
        pieces.add(piece.toString());
        piece.setLength(0);
      }
      piece.append(next);
      at += next.length();
    }
    pieces.add(piece.toString());
    return pieces;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
