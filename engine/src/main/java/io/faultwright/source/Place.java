package io.faultwright.source;

import java.util.Comparator;

/**
 * A stretch of text in a file of the knowledge base.
 *
 * @param file path relative to the knowledge base, with forward slashes
 * @param line first line, counted from 1
 * @param column first column, counted from 1 in characters (code points)
 * @param length characters to underline on that line, at least 1
 */
public record Place(String file, int line, int column, int length) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column)
          .thenComparingInt(Place::length);

  public Place {
    length = Math.max(1, length);
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
