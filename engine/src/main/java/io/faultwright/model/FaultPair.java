package io.faultwright.model;

import java.util.Comparator;

/**
 * Two faults that may be present at once.
 *
 * @param one the smaller id
 * @param other the larger id
 */
public record FaultPair(String one, String other) implements Comparable<FaultPair> {
  public static FaultPair of(String a, String b) {
    return a.compareTo(b) <= 0 ? new FaultPair(a, b) : new FaultPair(b, a);
  }

  @Override
  public int compareTo(FaultPair pair) {
    return Comparator.comparing(FaultPair::one).thenComparing(FaultPair::other).compare(this, pair);
  }
}
