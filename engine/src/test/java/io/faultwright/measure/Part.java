package io.faultwright.measure;

/** A part of a column that is not empty. */
sealed interface Part permits Span, Values {
  /** Whether something lies in this part and in another of the same column. */
  boolean meets(Part other);
}
