package io.faultwright.layout;

import io.faultwright.flow.Warning;
import io.faultwright.words.SignalWords;
import io.faultwright.words.Words;
import java.util.List;

/**
 * Sets a caution: the safety alert symbol unless it is a notice, the signal word in bold capitals,
 * then the text run in.
 */
final class CautionText {
  private static final int MOST_LINES = 12;

  private final double size;
  private final double leading;
  private final Words say;

  CautionText(double size, double leading, Words say) {
    this.say = say;
    this.size = size;
    this.leading = leading;
  }

  /** Adds some of a warning's text to a column of a width. */
  void add(Paragraph column, Warning warning, String text, double width) {
    String word = SignalWords.of(warning.word(), say);
    double symbol = warning.alert() ? Grid.half(leading * 1.15) : 0;
    double head = Grid.half(symbol + Typography.width(word, size, true) + size * 0.5);
    List<String> lines =
        new Wrap(size, false).lines(text, line -> width - (line == 0 ? head : 0), MOST_LINES);
    if (warning.alert()) {
      column.outline(Shape.Kind.ALERT, 0, 0.5, Grid.half(leading), Grid.half(leading * 0.88));
    }
    column.mark(word, symbol, size, true, leading);
    int first = Math.min(1, lines.size());
    column.add(first == 0 ? List.of("") : lines.subList(0, 1), head, size, false, leading);
    column.add(lines.subList(first, lines.size()), 0, size, false, leading);
    column.skip(Grid.half(leading * 0.25));
  }
}
