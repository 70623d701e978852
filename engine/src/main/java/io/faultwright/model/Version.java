package io.faultwright.model;

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

  /** Compares digit by digit: numbers are not made, as builds are compared very often. */
  @Override
  public int compareTo(Version other) {
    int mine = 0;
    int theirs = 0;
    while (mine < text.length() && theirs < other.text.length()) {
      int order = compare(other, mine, theirs);
      if (order != 0) {
        return order;
      }
      mine = end(mine) + 1;
      theirs = other.end(theirs) + 1;
    }
    return Boolean.compare(mine < text.length(), theirs < other.text.length());
  }

  /** Compares the segments that begin at two places. */
  private int compare(Version other, int mine, int theirs) {
    int first = first(mine);
    int firstOfOther = other.first(theirs);
    int digits = end(mine) - first;
    int order = Integer.compare(digits, other.end(theirs) - firstOfOther);
    for (int i = 0; order == 0 && i < digits; i++) {
      order = Character.compare(text.charAt(first + i), other.text.charAt(firstOfOther + i));
    }
    return order;
  }

  /** The end of the segment that begins at a place. */
  private int end(int place) {
    int stop = text.indexOf('.', place);
    return stop < 0 ? text.length() : stop;
  }

  /** The first digit that counts, zeros in front being left out. */
  private int first(int place) {
    int end = end(place);
    int first = place;
    while (first < end && text.charAt(first) == '0') {
      first++;
    }
    return first;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Version version && compareTo(version) == 0;
  }

  @Override
  public int hashCode() {
    int hash = 1;
    for (int place = 0; place < text.length(); place = end(place) + 1) {
      for (int i = first(place); i < end(place); i++) {
        hash = 31 * hash + text.charAt(i);
      }
      hash = 31 * hash + '.';
    }
    return hash;
  }

  @Override
  public String toString() {
    return text;
  }
}
