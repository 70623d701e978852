package io.faultwright.grading;

import java.util.List;

/**
 * Answers of ten persons to ten items, 1 for right. Source: K. L. Wuensch, East Carolina
 * University, data for the Kuder-Richardson formula 20.
 */
public final class PublishedAnswers {
  /** A row for each person. */
  public static final List<String> ROWS =
      List.of(
          "1111110110",
          "1011011101",
          "1111011001",
          "0010001000",
          "0000010010",
          "1110111111",
          "1101110111",
          "1111111101",
          "0101111101",
          "1101101110");

  private PublishedAnswers() {}
}
