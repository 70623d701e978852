package io.faultwright.field;

import java.util.SortedSet;
import java.util.TreeSet;

/** How many rows have a value in each class of a reading; a table of numbers that grows by two. */
final class Histogram {
  /** Spreads neighbouring classes (Knuth, The Art of Computer Programming 3, section 6.4). */
  private static final int SPREAD = 0x9E3779B9;

  private int[] values = new int[4];
  private long[] counts = new long[4];
  private int classes;
  private long rows;

  /** Counts a row, unless that takes a new class for which there is no room. */
  boolean add(int value, Room room) {
    int at = slot(value);
    if (counts[at] == 0) {
      if (!room.take()) {
        return false;
      }
      at = take(value);
    }
    counts[at]++;
    rows++;
    return true;
  }

  /** Where the count of a class stands, or would. */
  private int slot(int value) {
    int mask = values.length - 1;
    int at = (value * SPREAD >>> 8) & mask;
    while (counts[at] != 0 && values[at] != value) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private int take(int value) {
    classes++;
    if (2 * classes > values.length) {
      grow();
    }
    int at = slot(value);
    values[at] = value;
    return at;
  }

  private void grow() {
    int[] oldValues = values;
    long[] oldCounts = counts;
    values = new int[2 * oldValues.length];
    counts = new long[2 * oldValues.length];
    for (int i = 0; i < oldValues.length; i++) {
      if (oldCounts[i] != 0) {
        int at = slot(oldValues[i]);
        values[at] = oldValues[i];
        counts[at] = oldCounts[i];
      }
    }
  }

  /** Rows in a class. */
  long in(int value) {
    return counts[slot(value)];
  }

  /** Rows that have a value. */
  long rows() {
    return rows;
  }

  /** Classes with a row in them, without the one for what cannot be taken. */
  SortedSet<Integer> taken() {
    SortedSet<Integer> taken = new TreeSet<>();
    for (int i = 0; i < values.length; i++) {
      if (counts[i] != 0 && values[i] != Classes.NOT_TAKEN) {
        taken.add(values[i]);
      }
    }
    return taken;
  }
}
