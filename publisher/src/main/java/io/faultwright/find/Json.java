package io.faultwright.find;

import com.fasterxml.jackson.core.io.JsonStringEncoder;

/** Texts as JSON that may also stand in a script or a page. */
final class Json {
  private Json() {}

  /** The text in quotes, with all escaped that could end a string, a line or the script. */
  static String text(String text) {
    String quoted = new String(JsonStringEncoder.getInstance().quoteAsString(text));
    String safe =
        quoted.replace("<", "\\u003c").replace("\u2028", "\\u2028").replace("\u2029", "\\u2029");
    return '"' + safe + '"';
  }
}
