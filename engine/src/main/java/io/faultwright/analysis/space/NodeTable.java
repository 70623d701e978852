package io.faultwright.analysis.space;

import java.util.Arrays;

/** Stores each distinct diagram node once; numbers 0 and 1 stand for the two leaves. */
final class NodeTable {
  private int[] axes = new int[256];
  private int[] starts = new int[256];
  private int[] lengths = new int[256];
  private int[] children = new int[1024];
  private int[] buckets = filledBuckets(1024);
  private int used;
  private int count = 2;

  int count() {
    return count;
  }

  int axis(int node) {
    return axes[node];
  }

  int child(int node, int cell) {
    return children[starts[node] + cell];
  }

  /** The number of the node with this axis and these children, new or known. */
  int intern(int axis, int[] wanted) {
    int bucket = hash(axis, wanted) & (buckets.length - 1);
    while (buckets[bucket] >= 0) {
      if (same(buckets[bucket], axis, wanted)) {
        return buckets[bucket];
      }
      bucket = (bucket + 1) & (buckets.length - 1);
    }
    int node = append(axis, wanted);
    buckets[bucket] = node;
    if (count * 2 > buckets.length) {
      rehash();
    }
    return node;
  }

  private boolean same(int node, int axis, int[] wanted) {
    return axes[node] == axis
        && Arrays.equals(
            children, starts[node], starts[node] + lengths[node], wanted, 0, wanted.length);
  }

  private int append(int axis, int[] wanted) {
    if (count == axes.length) {
      axes = Arrays.copyOf(axes, count * 2);
      starts = Arrays.copyOf(starts, count * 2);
      lengths = Arrays.copyOf(lengths, count * 2);
    }
    if (used + wanted.length > children.length) {
      children = Arrays.copyOf(children, Math.max(children.length * 2, used + wanted.length));
    }
    System.arraycopy(wanted, 0, children, used, wanted.length);
    axes[count] = axis;
    starts[count] = used;
    lengths[count] = wanted.length;
    used += wanted.length;
    return count++;
  }

  private void rehash() {
    int[] wider = filledBuckets(buckets.length * 2);
    for (int node : buckets) {
      if (node >= 0) {
        int bucket = hash(axes[node], childrenOf(node)) & (wider.length - 1);
        while (wider[bucket] >= 0) {
          bucket = (bucket + 1) & (wider.length - 1);
        }
        wider[bucket] = node;
      }
    }
    buckets = wider;
  }

  private int[] childrenOf(int node) {
    return Arrays.copyOfRange(children, starts[node], starts[node] + lengths[node]);
  }

  private static int hash(int axis, int[] wanted) {
    int hash = axis * 0x9E3779B9 + Arrays.hashCode(wanted);
    hash ^= hash >>> 15;
    hash *= 0x85EBCA6B;
    return hash ^ hash >>> 13;
  }

  private static int[] filledBuckets(int length) {
    int[] buckets = new int[length];
    Arrays.fill(buckets, -1);
    return buckets;
  }
}
