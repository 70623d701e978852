package io.faultwright.model;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/** A software version; segments compare as whole numbers, so 2.9 is older than 2.10. */
public final class Version implements Comparable<Version> {
  /** Older than every version. */
  static final Version NONE = new Version("0");

  private final String text;
  private final List<BigInteger> segments;

  /**
   * A version.
   *
   * @param text as written, for instance {@code 2.10}
   */
  public Version(String text) {
    this.text = text;
    this.segments = Arrays.stream(text.split("\\.")).map(BigInteger::new).toList();
  }

  /** As written. */
  public String text() {
    return text;
  }

  /** Whether text is a version: whole numbers with full stops between them. */
  public static boolean isVersion(String text) {
    return text.matches("\\d+(\\.\\d+)*");
  }

  @Override
  public int compareTo(Version other) {
    List<BigInteger> theirs = other.segments;
    for (int i = 0; i < Math.min(segments.size(), theirs.size()); i++) {
      int order = segments.get(i).compareTo(theirs.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(segments.size(), theirs.size());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Version version && compareTo(version) == 0;
  }

  @Override
  public int hashCode() {
    return segments.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
