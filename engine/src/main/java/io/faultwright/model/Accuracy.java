package io.faultwright.model;

import java.util.List;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far what an instrument shows may lie from what is there, to either side: the sum of its
 * parts.
 *
 * @param parts in the written order, at least one
 */
public record Accuracy(List<Part> parts) {
  public Accuracy {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("an accuracy has a part");
    }
  }

  /** Half the width of the stretch in which the true value lies, in the reading's unit. */
  public BigFraction at(BigFraction shown) {
    return parts.stream().map(part -> part.at(shown)).reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** One summand. */
  public sealed interface Part {
    /** Its size where the instrument shows this value. */
    BigFraction at(BigFraction shown);

    /** Dispatches on the kind of part. */
    <T> T match(
        Function<Fixed, T> fixed, Function<OfReading, T> ofReading, Function<OfScale, T> ofScale);
  }

  /**
   * The same everywhere.
   *
   * @param amount a difference, in the reading's unit
   */
  public record Fixed(BigFraction amount) implements Part {
    @Override
    public BigFraction at(BigFraction shown) {
      return amount;
    }

    @Override
    public <T> T match(
        Function<Fixed, T> fixed, Function<OfReading, T> ofReading, Function<OfScale, T> ofScale) {
      return fixed.apply(this);
    }
  }

  /** A share of what is shown, whatever its sign. */
  public record OfReading(BigFraction share) implements Part {
    @Override
    public BigFraction at(BigFraction shown) {
      return share.multiply(shown.abs());
    }

    @Override
    public <T> T match(
        Function<Fixed, T> fixed, Function<OfReading, T> ofReading, Function<OfScale, T> ofScale) {
      return ofReading.apply(this);
    }
  }

  /**
   * A share of the end of the scale.
   *
   * @param share 1 for all of it
   * @param end of the scale, in the reading's unit
   */
  public record OfScale(BigFraction share, BigFraction end) implements Part {
    @Override
    public BigFraction at(BigFraction shown) {
      return share.multiply(end);
    }

    @Override
    public <T> T match(
        Function<Fixed, T> fixed, Function<OfReading, T> ofReading, Function<OfScale, T> ofScale) {
      return ofScale.apply(this);
    }
  }
}
