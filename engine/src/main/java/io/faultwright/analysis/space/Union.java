package io.faultwright.analysis.space;

import java.util.Arrays;
import java.util.BitSet;

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
  public double atLeast() {
    return new Fractions(diagrams, joined).atLeast(diagrams.everything());
  }

  @Override
  public double atMost() {
    BitSet[] everything = diagrams.everything();
    double sum = new Fractions(diagrams, joined).atMost(everything);
    for (int set : Arrays.copyOfRange(sets, next, sets.length)) {
      sum += new Fractions(diagrams, set).atMost(everything);
    }
    return Math.min(1, sum);
  }
}
