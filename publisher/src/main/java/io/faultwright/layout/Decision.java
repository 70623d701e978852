package io.faultwright.layout;

import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Finds the smallest diamond that holds a question. */
final class Decision {
  /** Width by height of a decision, flat enough to print a question in. */
  private static final double FLATNESS = 2.4;

  private static final int MOST_LINES = 9;

  /** Letters of a word that may stand on a line of its own. */
  private static final int LONG_WORD = 8;

  /** Most height, in lines. */
  private static final double HIGHEST = 14;

  /** Less than what lies between a line's letters and the next line, rounding included. */
  private static final double ROUNDED = 0.5;

  /** Between the ends of a line and the outline, both together. */
  private static final double AIR = 3;

  private final Typography type;

  Decision(Typography type) {
    this.type = type;
  }

  /** A diamond with its lines. */
  private record Fit(double width, double height, List<String> lines) {}

  Figure figure(String question) {
    Fit fit = smallest(question);
    double top = (fit.height - fit.lines.size() * type.leading()) / 2;
    Paragraph text = new Paragraph(0, Grid.half(top));
    text.addCentred(fit.lines, fit.width / 2, type.size(), false, type.leading());
    Box box = new Box(0, 0, fit.width, fit.height);
    return new Figure(
        fit.width, fit.height, List.of(new Shape(Shape.Kind.DECISION, box)), text.texts());
  }

  private Fit smallest(String question) {
    return smallest(question, Decision::looksWhole)
        .or(() -> smallest(question, lines -> true))
        .orElseGet(() -> shortened(question, width(highest()), highest()));
  }

  private Optional<Fit> smallest(String question, Predicate<List<String>> good) {
    EvenLines text = new EvenLines(question, type.size(), false);
    for (double height = Grid.even(3.4 * type.leading()); height < highest(); height += 2) {
      Optional<Fit> fit = fit(text, width(height), height, good);
      if (fit.isPresent()) {
        return fit;
      }
    }
    return Optional.empty();
  }

  private double highest() {
    return Grid.even(HIGHEST * type.leading());
  }

  /** Whether no short word stands alone at the tip of a diamond of several lines. */
  private static boolean looksWhole(List<String> lines) {
    return lines.size() == 1 || !isLonely(lines.get(0)) && !isLonely(lines.get(lines.size() - 1));
  }

  private static boolean isLonely(String line) {
    return line.indexOf(' ') < 0 && line.length() < LONG_WORD;
  }

  private double width(double height) {
    return Math.min(Grid.even(height * FLATNESS), type.decisionWidth());
  }

  private Optional<Fit> fit(
      EvenLines text, double width, double height, Predicate<List<String>> good) {
    return IntStream.rangeClosed(1, MOST_LINES)
        .mapToObj(
            count ->
                text.lines(count, line -> room(width, height, count, line))
                    .filter(good)
                    .map(lines -> new Fit(width, height, lines)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Fit shortened(String question, double width, double height) {
    Wrap wrap = new Wrap(type.size(), false);
    IntToDoubleFunction room = line -> room(width, height, MOST_LINES, line);
    return new Fit(width, height, wrap.lines(question, room, MOST_LINES));
  }

  /** Width inside the diamond beside the corners of a line, with a little air. */
  private double room(double width, double height, int count, int line) {
    double fromMiddle = (line - count / 2.0) * type.leading();
    double furthest = Math.max(Math.abs(fromMiddle), Math.abs(fromMiddle + type.leading()));
    return Math.max(0, width * (1 - 2 * (furthest - ROUNDED) / height) - AIR);
  }
}
