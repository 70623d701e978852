package io.faultwright.analysis.space;

import java.math.BigInteger;
import java.util.Arrays;

/** Many sets joined, one after the other. */
public final class Union implements Bounded {
  private final Diagrams diagrams;
  private final int[] sets;
  private int joined = Diagrams.NONE;
  private int next;

  public Union(Diagrams diagrams, int[] sets) {
    this.diagrams = diagrams;
    this.sets = sets.clone();
  }

  @Override
  public int whole() {
    while (next < sets.length) {
      joined = diagrams.or(joined, sets[next]);
      next++;
    }
    return joined;
  }

  @Override
  public int known() {
    return joined;
  }

  @Override
  public BigInteger atLeast() {
    return diagrams.count(joined);
  }

  @Override
  public BigInteger atMost() {
    return Arrays.stream(sets, next, sets.length)
        .mapToObj(diagrams::count)
        .reduce(diagrams.count(joined), BigInteger::add);
  }
}
