package io.faultwright.source;

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
}
