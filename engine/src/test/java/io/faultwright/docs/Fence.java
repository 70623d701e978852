package io.faultwright.docs;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A fenced block of a Markdown page.
 *
 * @param line the line of its opening fence, counted from 1
 * @param info what stands behind the opening fence: a language, words, and {@code name=value} pairs
 * @param body its text, every line ended by a line feed
 */
record Fence(int line, String info, String body) {
  /** The language for colouring. */
  String language() {
    return words().get(0);
  }

  /** Whether a word stands in the info. */
  boolean says(String word) {
    return words().contains(word);
  }

  /** The value of a pair in the info. */
  Optional<String> value(String name) {
    return words().stream()
        .filter(word -> word.startsWith(name + "="))
        .map(word -> word.substring(name.length() + 1))
        .findFirst();
  }

  private List<String> words() {
    return Arrays.asList(info.strip().split("\\s+"));
  }
}
