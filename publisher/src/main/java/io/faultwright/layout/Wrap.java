package io.faultwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Breaks text into lines that fit. */
final class Wrap {
  private static final String ELLIPSIS = "…";

  private final double size;
  private final boolean bold;

  Wrap(double size, boolean bold) {
    this.size = size;
    this.bold = bold;
  }

  /**
   * Text as it can be printed: controls and overrides of the writing direction gone, white space
   * single.
   */
  static String clean(String text) {
    StringBuilder clean = new StringBuilder();
    text.codePoints().map(Wrap::printable).filter(c -> c >= 0).forEach(clean::appendCodePoint);
    return clean.toString().replaceAll(" {2,}", " ").strip();
  }

  private static int printable(int codePoint) {
    if (Character.isWhitespace(codePoint) || codePoint == 0x85 || codePoint == 0xFEFF) {
      return ' ';
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL -> -1;
      case Character.SURROGATE, Character.UNASSIGNED -> 0xFFFD;
      case Character.FORMAT -> codePoint >= 0x202A && codePoint <= 0x2069 ? -1 : codePoint;
      default -> codePoint;
    };
  }

  /** Lines no wider than a width; as many as it takes up to a limit, then an ellipsis. */
  List<String> lines(String text, double width, int limit) {
    return lines(text, line -> width, limit);
  }

  /** Lines of which each has a width of its own. */
  List<String> lines(String text, IntToDoubleFunction widths, int limit) {
    List<String> lines = new ArrayList<>();
    String rest = clean(text);
    while (!rest.isEmpty() && lines.size() < limit) {
      int end = fitting(rest, widths.applyAsDouble(lines.size()));
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    if (!rest.isEmpty()) {
      int last = limit - 1;
      lines.set(last, shortened(lines.get(last), widths.applyAsDouble(last)));
    }
    return List.copyOf(lines);
  }

  /** As few lines as the width allows, of nearly equal length. */
  List<String> balanced(String text, double width, int limit) {
    List<String> lines = lines(text, width, limit);
    return new EvenLines(text, size, bold).lines(lines.size(), line -> width).orElse(lines);
  }

  double width(String text) {
    return Typography.width(text, size, bold);
  }

  double widest(List<String> lines) {
    return lines.stream().mapToDouble(this::width).max().orElse(0);
  }

  /** How much of the text goes on a line: whole words, or part of a word that is too long. */
  private int fitting(String text, double width) {
    int end = 0;
    int next = wordEnd(text, 0);
    while (width(text.substring(0, next)) <= width) {
      end = next;
      if (next == text.length()) {
        break;
      }
      next = wordEnd(text, next + 1);
    }
    return end > 0 ? end : characters(text.substring(0, next), width);
  }

  private static int wordEnd(String text, int from) {
    int blank = text.indexOf(' ', from);
    return blank < 0 ? text.length() : blank;
  }

  private int characters(String word, double width) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (width(word.substring(0, next)) > width) {
        break;
      }
      end = next;
    }
    int hyphen = word.lastIndexOf('-', end - 1);
    return end < word.length() && hyphen > 1 ? hyphen + 1 : end;
  }

  private String shortened(String line, double width) {
    String kept = line;
    while (!kept.isEmpty() && width(kept + ELLIPSIS) > width) {
      kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
    }
    return kept.stripTrailing() + ELLIPSIS;
  }
}
