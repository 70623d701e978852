package io.faultwright.translation;

/** What becomes of each text that a handbook shows. */
@FunctionalInterface
interface Rewording {
  String reword(ShownText text);
}
