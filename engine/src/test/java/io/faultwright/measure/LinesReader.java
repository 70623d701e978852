package io.faultwright.measure;

import java.io.Reader;
import java.util.Iterator;

/** Reads lines that are made as they are read. */
final class LinesReader extends Reader {
  private final Iterator<String> lines;
  private String line = "";
  private int at;

  LinesReader(Iterator<String> lines) {
    this.lines = lines;
  }

  @Override
  public int read(char[] into, int from, int most) {
    if (at == line.length()) {
      if (!lines.hasNext()) {
        return -1;
      }
      line = lines.next();
      at = 0;
    }
    int count = Math.min(most, line.length() - at);
    line.getChars(at, at + count, into, from);
    at += count;
    return count;
  }

  @Override
  public void close() {}
}
