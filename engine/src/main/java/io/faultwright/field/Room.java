package io.faultwright.field;

/** What is left of the memory that may be used to count; the same for the same rows. */
final class Room {
  private long left;

  Room(long classes) {
    this.left = classes;
  }

  /** Takes one class; false where there is none left. */
  boolean take() {
    if (left > 0) {
      left--;
      return true;
    }
    return false;
  }
}
