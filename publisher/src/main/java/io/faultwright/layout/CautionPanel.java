package io.faultwright.layout;

import io.faultwright.flow.Warning;
import io.faultwright.words.Words;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The cautions of a page in full, to be read before the chart; beside each step only the hazard is
 * repeated.
 */
final class CautionPanel {
  private static final double SIZE = Typography.SMALLEST;
  private static final double LEADING = 10.5;
  private static final double BETWEEN = 16;

  /** Paper this wide takes two columns, so that lines stay short enough to read. */
  private static final double WIDE = 600;

  /** Signal words, gravest first (ANSI Z535.6). */
  private static final List<String> WORDS = List.of("DANGER", "WARNING", "CAUTION", "NOTICE");

  private CautionPanel() {}

  /** The order in which cautions are read: the gravest first. */
  static final Comparator<Warning> GRAVEST =
      Comparator.comparing((Warning warning) -> WORDS.indexOf(warning.word()))
          .thenComparing(Warning::text);

  /** Cautions in full. */
  static Figure of(List<Warning> warnings, double width, Words say) {
    return width < WIDE || warnings.size() < 2
        ? single(warnings, width, say)
        : twin(warnings, width, say);
  }

  private static Figure single(List<Warning> warnings, double width, Words say) {
    Paragraph column = new Paragraph(0, 0);
    CautionText text = new CautionText(SIZE, LEADING, say);
    warnings.forEach(warning -> text.add(column, warning, warning.text(), width));
    return new Figure(width, column.bottom(), column.shapes(), column.texts());
  }

  private static Figure twin(List<Warning> warnings, double width, Words say) {
    double half = Grid.half((width - BETWEEN) / 2);
    int middle = (warnings.size() + 1) / 2;
    Figure left = single(warnings.subList(0, middle), half, say);
    Figure right =
        single(warnings.subList(middle, warnings.size()), half, say).shifted(width - half, 0);
    return new Figure(
        width,
        Math.max(left.height(), right.height()),
        Stream.concat(left.shapes().stream(), right.shapes().stream()).toList(),
        Stream.concat(left.texts().stream(), right.texts().stream()).toList());
  }
}
