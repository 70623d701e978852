package io.faultwright.syntax;

import io.faultwright.source.SourceFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes stretches of a file and leaves every other byte of it as it is. */
public final class Splices {
  /**
   * A stretch and what stands there from now on.
   *
   * @param start in the text with plain line feeds
   * @param end exclusive
   * @param text with plain line feeds
   */
  private record Splice(int start, int end, String text) {}

  private final String raw;
  private final int[] rawOffsets;
  private final List<Splice> splices = new ArrayList<>();

  /**
   * For a file.
   *
   * @param raw its text with the line ends and the byte order mark it has
   */
  public Splices(String raw) {
    this.raw = raw;
    this.rawOffsets = offsets(raw);
  }

  /** Where each character that {@link SourceFile#of} keeps stands in the raw text. */
  private static int[] offsets(String raw) {
    int[] offsets = new int[raw.length() + 1];
    int at = raw.startsWith("\uFEFF") ? 1 : 0;
    int count = 0;
    while (at < raw.length()) {
      offsets[count++] = at;
      at += raw.startsWith("\r\n", at) ? 2 : 1;
    }
    offsets[count] = raw.length();
    return offsets;
  }

  public void replace(int start, int end, String text) {
    splices.add(new Splice(start, end, text));
  }

  public void insert(int at, String text) {
    replace(at, at, text);
  }

  /** The raw text with all changes; what was added first at a place stands first. */
  public String apply() {
    String lineEnd = lineEnd();
    StringBuilder text = new StringBuilder();
    int done = 0;
    List<Splice> inOrder = new ArrayList<>(splices);
    inOrder.sort(Comparator.comparingInt(Splice::start));
    for (Splice splice : inOrder) {
      int start = rawOffsets[splice.start()];
      text.append(raw, done, Math.max(done, start)).append(splice.text().replace("\n", lineEnd));
      done = Math.max(done, rawOffsets[splice.end()]);
    }
    return text.append(raw.substring(done)).toString();
  }

  /** What ends the first line of the file. */
  private String lineEnd() {
    int feed = raw.indexOf('\n');
    if (feed >= 0) {
      return feed > 0 && raw.charAt(feed - 1) == '\r' ? "\r\n" : "\n";
    }
    return raw.indexOf('\r') >= 0 ? "\r" : "\n";
  }
}
