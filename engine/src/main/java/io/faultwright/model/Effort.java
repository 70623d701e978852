package io.faultwright.model;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What it takes to take some readings. In order, the easier to get at comes before the quicker.
 *
 * @param access the gravest thing that has to be opened or touched
 * @param minutes how long all of them take, one after the other
 * @param weighted the same with every minute counted as often as {@link AccessWeights} say
 */
public record Effort(Access access, BigFraction minutes, BigFraction weighted)
    implements Comparable<Effort> {
  /** Nothing is taken. */
  public static final Effort NONE = new Effort(Access.OUTSIDE, BigFraction.ZERO, BigFraction.ZERO);

  /** What it takes to take one reading; what has to be set up for it is not in it. */
  public static Effort of(Reading reading, AccessWeights weights) {
    return of(reading.access(), reading.minutes(), weights);
  }

  /** What it takes to set something up. */
  public static Effort of(SetUp setUp, AccessWeights weights) {
    return of(setUp.access(), setUp.minutes(), weights);
  }

  private static Effort of(Access access, BigFraction minutes, AccessWeights weights) {
    return new Effort(access, minutes, minutes.multiply(weights.of(access)));
  }

  /** Both, one after the other. */
  public Effort plus(Effort other) {
    return new Effort(
        access.compareTo(other.access) >= 0 ? access : other.access,
        minutes.add(other.minutes),
        weighted.add(other.weighted));
  }

  @Override
  public int compareTo(Effort other) {
    return Comparator.comparing(Effort::access)
        .thenComparing(Effort::minutes)
        .thenComparing(Effort::weighted)
        .compare(this, other);
  }
}
