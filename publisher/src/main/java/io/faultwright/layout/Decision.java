package io.faultwright.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the smallest diamond that holds a question. */
final class Decision {
  /** Width by height of a decision, flat enough to print a question in. */
  private static final double FLATNESS = 2.2;

  private static final int MOST_LINES = 12;

  private final Typography type;
  private final Wrap wrap;

  Decision(Typography type) {
    this.type = type;
    this.wrap = new Wrap(type.size(), false);
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
    double height = Grid.even(3.6 * type.leading());
    for (; height < 2 * MOST_LINES * type.leading(); height += 2) {
      Optional<Fit> fit = fit(question, width(height), height);
      if (fit.isPresent()) {
        return fit.get();
      }
    }
    return shortened(question, height);
  }

  private double width(double height) {
    return Math.min(Grid.even(height * FLATNESS), type.decisionWidth());
  }

  private Fit shortened(String question, double height) {
    double width = width(height);
    return new Fit(
        width,
        height,
        wrap.lines(question, line -> room(width, height, MOST_LINES, line), MOST_LINES));
  }

  private Optional<Fit> fit(String question, double width, double height) {
    return IntStream.rangeClosed(1, MOST_LINES)
        .boxed()
        .flatMap(count -> lines(question, width, height, count))
        .map(lines -> new Fit(width, height, lines))
        .min(Comparator.comparingInt(found -> found.lines.size()));
  }

  private Stream<List<String>> lines(String question, double width, double height, int count) {
    return wrap
        .whole(question, line -> room(width, height, count, line), count)
        .filter(lines -> lines.size() == count)
        .stream();
  }

  /** Width inside the diamond at the corners of a line that lies furthest from the middle. */
  private double room(double width, double height, int count, int line) {
    double fromMiddle = (line - count / 2.0) * type.leading();
    double furthest = Math.max(Math.abs(fromMiddle), Math.abs(fromMiddle + type.leading()));
    return width * (1 - 2 * (furthest - 1.5) / height) - type.padding();
  }
}
