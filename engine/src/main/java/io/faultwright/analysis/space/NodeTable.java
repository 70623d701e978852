package io.faultwright.analysis.space;

import java.util.Arrays;

/**
 * Stores each distinct diagram node once; numbers 0 and 1 stand for the two leaves. A node keeps
 * its children as runs of equal neighbours, so that an axis of hundreds of cells costs no more than
 * what is asked about it.
 */
final class NodeTable {
  private int[] axes = new int[256];
  private int[] starts = new int[257];
  private int[] pairs = new int[1024];
  private int[] buckets = filledBuckets(1024);
  private int used;
  private int count = 2;

  int count() {
    return count;
  }

  int axis(int node) {
    return axes[node];
  }

  /** Number of runs of a node. */
  int runs(int node) {
    return (starts[node + 1] - starts[node]) / 2;
  }

  /** The child of a run. */
  int runChild(int node, int run) {
    return pairs[starts[node] + 2 * run];
  }

  /** The cell after the last of a run. */
  int runEnd(int node, int run) {
    return pairs[starts[node] + 2 * run + 1];
  }

  /** The child in a cell. */
  int child(int node, int cell) {
    int low = 0;
    int high = runs(node) - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (runEnd(node, middle) > cell) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return runChild(node, low);
  }

  /** The number of the node with this axis and these children, new or known. */
  int intern(int axis, Runs runs) {
    int bucket = hash(axis, runs.pairs(), 0, runs.length()) & (buckets.length - 1);
    while (buckets[bucket] >= 0) {
      if (same(buckets[bucket], axis, runs)) {
        return buckets[bucket];
      }
      bucket = (bucket + 1) & (buckets.length - 1);
    }
    int node = append(axis, runs);
    buckets[bucket] = node;
    if (count * 2 > buckets.length) {
      rehash();
    }
    return node;
  }

  private boolean same(int node, int axis, Runs runs) {
    return axes[node] == axis
        && Arrays.equals(pairs, starts[node], starts[node + 1], runs.pairs(), 0, runs.length());
  }

  private int append(int axis, Runs runs) {
    if (count == axes.length) {
      axes = Arrays.copyOf(axes, count * 2);
      starts = Arrays.copyOf(starts, count * 2 + 1);
    }
    if (used + runs.length() > pairs.length) {
      requireMemory();
      pairs = Arrays.copyOf(pairs, Math.max(pairs.length * 2, used + runs.length()));
    }
    System.arraycopy(runs.pairs(), 0, pairs, used, runs.length());
    axes[count] = axis;
    starts[count] = used;
    used += runs.length();
    starts[count + 1] = used;
    return count++;
  }

  /**
   * A diagram that grows beyond all memory is given up, as if the time were over.
   *
   * @throws OutOfTime where the numbers would take a fourth of the memory there is
   */
  private void requireMemory() {
    if (2L * pairs.length * Integer.BYTES > Runtime.getRuntime().maxMemory() / 4) {
      throw new OutOfTime();
    }
  }

  private void rehash() {
    int[] wider = filledBuckets(buckets.length * 2);
    for (int node : buckets) {
      if (node >= 0) {
        int bucket = hash(axes[node], pairs, starts[node], starts[node + 1]) & (wider.length - 1);
        while (wider[bucket] >= 0) {
          bucket = (bucket + 1) & (wider.length - 1);
        }
        wider[bucket] = node;
      }
    }
    buckets = wider;
  }

  private static int hash(int axis, int[] pairs, int from, int to) {
    int hash = axis + 1;
    for (int i = from; i < to; i++) {
      hash = (hash ^ pairs[i]) * 0x9E3779B9;
      hash ^= hash >>> 15;
    }
    hash *= 0x85EBCA6B;
    return hash ^ hash >>> 13;
  }

  private static int[] filledBuckets(int length) {
    int[] buckets = new int[length];
    Arrays.fill(buckets, -1);
    return buckets;
  }
}
