package io.faultwright.report;

/** Numbers of things in words. */
final class Counts {
  private Counts() {}

  /** {@code no errors}, {@code 1 error}, {@code 2 errors}. */
  static String of(long number, String noun) {
    return (number == 0 ? "no" : Long.toString(number)) + " " + noun + (number == 1 ? "" : "s");
  }
}
