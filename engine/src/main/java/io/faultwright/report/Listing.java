package io.faultwright.report;

/**
 * How much of a long list is printed.
 *
 * @param everything whether all of it is
 */
record Listing(boolean everything) {
  private static final int FEW = 5;
  private static final int SOME = 10;

  /** How many of so many: all, or the first five. */
  int few(int all) {
    return everything ? all : Math.min(all, FEW);
  }

  /** How many of so many: all, or the first ten. */
  int some(int all) {
    return everything ? all : Math.min(all, SOME);
  }

  /** How many of so many: all, or none. */
  int ofMany(int all) {
    return everything ? all : 0;
  }

  /** Says that more is left; nothing where none is. */
  String rest(int left) {
    return left == 0 ? "" : "    and " + left + " more\n";
  }
}
