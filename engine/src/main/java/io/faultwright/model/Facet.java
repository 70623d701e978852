package io.faultwright.model;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A flat piece of the limits over what they follow.
 *
 * @param border where this is above zero, or zero where the piece has its edge, is the piece's side
 *     of the diagonal that splits a cell of a table with two drivers; absent where it is all there
 * @param edge whether the edge belongs to the piece
 * @param figures low and high; absent where the table has no figure
 */
public record Facet(Optional<Slope> border, boolean edge, Optional<Figures> figures) {
  /**
   * Limits of one piece.
   *
   * @param low lowest value within limits; absent: nothing is below
   * @param high highest value within limits; absent: nothing is above
   */
  public record Figures(Optional<Slope> low, Optional<Slope> high) {}

  /** A piece without figures on both sides of any border. */
  static final Facet NONE = new Facet(Optional.empty(), true, Optional.empty());

  /** The band that the one piece on which a point lies has there. */
  public static Optional<Band> band(List<Facet> pieces, List<BigFraction> drivers) {
    return pieces.stream()
        .filter(piece -> piece.holds(drivers))
        .findFirst()
        .flatMap(piece -> piece.band(drivers));
  }

  /** Whether a point near the piece lies on it. */
  boolean holds(List<BigFraction> drivers) {
    return border.map(form -> form.at(drivers).signum() >= (edge ? 0 : 1)).orElse(true);
  }

  /** The band at a point of the piece. */
  Optional<Band> band(List<BigFraction> drivers) {
    return figures.map(
        both ->
            new Band(
                both.low().map(low -> low.at(drivers)), both.high().map(high -> high.at(drivers))));
  }
}
