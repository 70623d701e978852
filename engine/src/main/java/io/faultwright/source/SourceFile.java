package io.faultwright.source;

import java.util.List;

/**
 * One file of a knowledge base.
 *
 * @param path path relative to the knowledge base, with forward slashes
 * @param text the whole text, lines ended by a line feed
 */
public record SourceFile(String path, String text) {
  /** The text with CRLF and CR turned into line feeds and a leading byte order mark dropped. */
  public static SourceFile of(String path, String text) {
    String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return new SourceFile(path, unmarked.replace("\r\n", "\n").replace('\r', '\n'));
  }

  /** Line {@code number} (from 1) without its line feed; empty beyond the end. */
  public String line(int number) {
    List<String> lines = text.lines().toList();
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }
}
