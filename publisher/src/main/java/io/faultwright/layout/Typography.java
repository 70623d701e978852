package io.faultwright.layout;

import io.faultwright.font.Typeface;
import io.faultwright.words.Words;

/**
 * Sizes of a chart, all following from its text size.
 *
 * @param size of questions and outcomes, in points
 * @param broad whether boxes are wide and low rather than narrow and high
 * @param say words of the tool in the language of the chart
 */
record Typography(double size, boolean broad, Words say) {
  /**
   * No text on a chart is smaller: a page printed at 94 percent, within margins, keeps 8 points.
   */
  static final double SMALLEST = 8.5;

  /** Size of steps, cautions, answers and advice. */
  double small() {
    return size - 0.5;
  }

  /** From baseline to baseline. */
  double leading() {
    return Grid.half(size * 1.18);
  }

  double smallLeading() {
    return Grid.half(small() * 1.18);
  }

  /** From the top of a line's slot to its baseline. */
  static double ascent(double leading) {
    return Grid.half(leading * 0.78);
  }

  /** Between an outline and its text. */
  double padding() {
    return Grid.half(size * 0.6);
  }

  /** Width of a box of steps. */
  double stepsWidth() {
    return Grid.even(size * (broad ? 21 : 15.5));
  }

  /** Most width of a decision. */
  double decisionWidth() {
    return Grid.even(size * (broad ? 21 : 17));
  }

  /** Most width of the text in a terminator. */
  double outcomeWidth() {
    return Grid.even(size * (broad ? 12.5 : 9.5));
  }

  /** Most width of an answer beside its line. */
  double answerWidth() {
    return Grid.even(size * (broad ? 8 : 6.5));
  }

  static double width(String text, double size, boolean bold) {
    return (bold ? Typeface.bold() : Typeface.regular()).width(text, size);
  }
}
