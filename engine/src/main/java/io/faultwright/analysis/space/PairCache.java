package io.faultwright.analysis.space;

import java.util.Arrays;

/** Remembers results of two-place operations; forgets some when it fills, grows with the nodes. */
final class PairCache {
  private static final int LARGEST = 1 << 21;

  private long[] keys = emptyKeys(1 << 10);
  private int[] results = new int[1 << 10];

  /** The remembered result, or -1. */
  int get(int a, int b) {
    long key = key(a, b);
    int slot = slot(key);
    return keys[slot] == key ? results[slot] : -1;
  }

  void put(int a, int b, int result, int nodeCount) {
    if (nodeCount > keys.length && keys.length < LARGEST) {
      grow();
    }
    long key = key(a, b);
    int slot = slot(key);
    keys[slot] = key;
    results[slot] = result;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldResults = results;
    keys = emptyKeys(oldKeys.length * 4);
    results = new int[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] >= 0) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        results[slot] = oldResults[i];
      }
    }
  }

  private int slot(long key) {
    long mixed = key * 0x9E3779B97F4A7C15L;
    return (int) (mixed >>> 40) & (keys.length - 1);
  }

  private static long key(int a, int b) {
    return (long) a << 32 | b;
  }

  private static long[] emptyKeys(int length) {
    long[] keys = new long[length];
    Arrays.fill(keys, -1L);
    return keys;
  }
}
