package io.faultwright.render.pdf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Lines that fit a width: as large as may be, on one line where that does not make them too small.
 *
 * @param size in points
 * @param lines from top to bottom
 */
record Fitting(double size, List<ShapedText> lines) {
  /** A text on one line may shrink to this part of its size before it gets a second one. */
  private static final double SHRINK = 0.6;

  private static final int MOST_LINES = 3;

  /** Below this nobody reads a certificate on a wall. */
  private static final double LEAST = 8;

  /**
   * A text.
   *
   * @param largest size in points
   * @param width in points
   */
  static Fitting of(String text, Shaper shaper, boolean strong, double largest, double width) {
    List<String> words = words(text);
    double wanted = largest * SHRINK;
    Fitting best = on(words, 1, shaper, strong, largest, width);
    for (int lines = 2; lines <= MOST_LINES && best.size < wanted; lines++) {
      Fitting more = on(words, lines, shaper, strong, wanted, width);
      best = more.size > best.size ? more : best;
    }
    return best.size >= LEAST ? best : cut(words, shaper, strong, width);
  }

  /** As many lines as it takes at the least size. */
  private static Fitting cut(List<String> words, Shaper shaper, boolean strong, double width) {
    int lines = MOST_LINES;
    Fitting fitting = on(words, lines, shaper, strong, LEAST, width);
    while (fitting.size < LEAST && lines < words.size()) {
      int wanted = (int) Math.ceil(lines * LEAST / fitting.size);
      lines = Math.min(words.size(), Math.max(lines + 1, wanted));
      fitting = on(words, lines, shaper, strong, LEAST, width);
    }
    return fitting;
  }

  /** Where a line may end: after a blank; anywhere where there is none, as in Japanese. */
  private static List<String> words(String text) {
    List<String> words = Arrays.asList(text.split("(?<= )"));
    return words.size() > 1
        ? words
        : text.codePoints().mapToObj(Character::toString).collect(Collectors.toList());
  }

  private static Fitting on(
      List<String> words, int lines, Shaper shaper, boolean strong, double largest, double width) {
    List<ShapedText> shaped =
        broken(words, lines).stream().map(line -> shaper.shape(line, strong)).toList();
    double widest = shaped.stream().mapToDouble(ShapedText::width).max().orElse(1);
    return new Fitting(Math.min(largest, width / Math.max(widest, 1e-6)), shaped);
  }

  /** Lines of about the same number of characters. */
  private static List<String> broken(List<String> words, int lines) {
    int all = words.stream().mapToInt(String::length).sum();
    List<String> broken = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int before = 0;
    for (String word : words) {
      double goal = (double) all * (broken.size() + 1) / lines;
      boolean over = before + word.length() / 2.0 > goal;
      if (over && !line.isEmpty() && broken.size() < lines - 1) {
        broken.add(line.toString().strip());
        line.setLength(0);
      }
      line.append(word);
      before += word.length();
    }
    broken.add(line.toString().strip());
    return broken;
  }
}
