package io.faultwright.analysis.suggestion;

/**
 * How the tests of a rule come out, a bit each.
 *
 * @param known the tests that are known
 * @param met those of them that are met
 */
record Outcomes(long known, long met) {
  /** With all tests known. */
  static Outcomes all(int tests, long met) {
    return new Outcomes((1L << tests) - 1, met);
  }

  boolean met(int test) {
    return (met & 1L << test) != 0;
  }

  /** Whether no test but one comes out differently, as far as known. */
  boolean differsAtMostIn(int test, Outcomes other) {
    long both = known & other.known & ~(1L << test);
    return ((met ^ other.met) & both) == 0;
  }
}
