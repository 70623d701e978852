package io.faultwright.sequence;

/** No order was found within the number of sets that may be looked into. */
public final class TooManySets extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TooManySets() {
    super("too many sets of situations", null, false, false);
  }
}
