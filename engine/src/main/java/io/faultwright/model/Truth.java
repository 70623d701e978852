package io.faultwright.model;

/** Strong three-valued logic (Kleene): what is known of a statement while readings are missing. */
public enum Truth {
  FALSE,
  UNKNOWN,
  TRUE;

  public static Truth of(boolean holds) {
    return holds ? TRUE : FALSE;
  }

  public Truth and(Truth other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public Truth or(Truth other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Truth not() {
    return this == UNKNOWN ? UNKNOWN : of(this == FALSE);
  }
}
