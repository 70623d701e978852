package io.faultwright.model;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/**
 * A software version; segments compare as whole numbers, so 2.9 is older than 2.10.
 *
 * @param text as written, for instance {@code 2.10}
 */
public record Version(String text) implements Comparable<Version> {
  /** Older than every version. */
  static final Version NONE = new Version("0");

  /** Whether text is a version: whole numbers with full stops between them. */
  public static boolean isVersion(String text) {
    return text.matches("\\d+(\\.\\d+)*");
  }

  @Override
  public int compareTo(Version other) {
    List<BigInteger> mine = segments();
    List<BigInteger> theirs = other.segments();
    for (int i = 0; i < Math.min(mine.size(), theirs.size()); i++) {
      int order = mine.get(i).compareTo(theirs.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(mine.size(), theirs.size());
  }

  private List<BigInteger> segments() {
    return Arrays.stream(text.split("\\.")).map(BigInteger::new).toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Version version && compareTo(version) == 0;
  }

  @Override
  public int hashCode() {
    return segments().hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
