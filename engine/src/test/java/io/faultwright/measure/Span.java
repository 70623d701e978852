package io.faultwright.measure;

/**
 * A stretch of a number line between two cuts. Cut {@code 2v} lies just below the whole number
 * {@code v}, cut {@code 2v + 1} just above it.
 *
 * @param from lower cut
 * @param to upper cut, greater than the lower
 */
record Span(int from, int to) implements Part {
  Span {
    if (from >= to) {
      throw new IllegalArgumentException("nothing lies between " + from + " and " + to);
    }
  }

  /** From one whole number to another, both included. */
  static Span closed(int low, int high) {
    return new Span(2 * low, 2 * high + 1);
  }

  int low() {
    return Math.floorDiv(from, 2);
  }

  boolean lowIncluded() {
    return Math.floorMod(from, 2) == 0;
  }

  int high() {
    return Math.floorDiv(to, 2);
  }

  boolean highIncluded() {
    return Math.floorMod(to, 2) == 1;
  }

  @Override
  public boolean meets(Part other) {
    Span span = (Span) other;
    return Math.max(from, span.from) < Math.min(to, span.to);
  }
}
