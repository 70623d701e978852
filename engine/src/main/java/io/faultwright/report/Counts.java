package io.faultwright.report;

/** Numbers of things in words. */
final class Counts {
  private Counts() {}

  /** {@code no errors}, {@code 1 error}, {@code 2 errors}, {@code 2 entries}. */
  static String of(long number, String noun) {
    return (number == 0 ? "no" : Long.toString(number)) + " " + (number == 1 ? noun : many(noun));
  }

  private static String many(String noun) {
    return noun.endsWith("ry") ? noun.substring(0, noun.length() - 1) + "ies" : noun + "s";
  }
}
