package io.faultwright.model;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What it takes to take some readings. In order, the easier to get at comes before the quicker.
 *
 * @param access the gravest thing that has to be opened or touched
 * @param minutes how long all of them take, one after the other
 * @param weighted the same with every minute counted as often as its {@link Access#weight} says
 */
public record Effort(Access access, BigFraction minutes, BigFraction weighted)
    implements Comparable<Effort> {
  /** Nothing is taken. */
  public static final Effort NONE = new Effort(Access.OUTSIDE, BigFraction.ZERO, BigFraction.ZERO);

  /** What it takes to take one reading. */
  public static Effort of(Reading reading) {
    return new Effort(
        reading.access(), reading.minutes(), reading.minutes().multiply(reading.access().weight()));
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
