package io.faultwright.cli;

/** Warns of characters that the typeface of a PDF lacks. */
final class Undrawn {
  private Undrawn() {}

  /** The line to say; empty where nothing is lacking. */
  static String warning(String what, String characters) {
    return characters.isEmpty()
        ? ""
        : "warning: the "
            + what
            + " prints `?` for characters its typeface lacks: "
            + characters
            + "\n";
  }
}
