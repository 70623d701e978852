package io.faultwright.handin;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;

/** Names of persons as they were typed. */
final class PersonNames {
  /** Longer ones are no names, and would fit no certificate. */
  private static final int LONGEST = 200;

  private PersonNames() {}

  /** Reports a name that is too long. */
  static void require(String written, Place place, Problems problems) {
    int length = written.codePointCount(0, written.length());
    if (length > LONGEST) {
      problems.add(
          place,
          "the name has " + length + " characters; expected at most " + LONGEST,
          "ask for the name alone");
    }
  }

  /** On one line, without blanks around it. */
  static String onOneLine(String written) {
    return written.strip().replaceAll("[\\s\\p{Cc}]+", " ");
  }
}
