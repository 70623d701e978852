package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Low and high for a reading.
 *
 * @param reading id of the quantity it judges
 * @param place where it stands
 * @param by the columns in the written order: equipment facts, and at most two quantities
 * @param drivers ids of the quantities the limits follow, in the order of {@code by}
 * @param between how values between rows are found; absent without drivers
 * @param rows in the written order
 */
public record LimitsTable(
    String reading,
    Place place,
    List<String> by,
    List<String> drivers,
    Optional<Between> between,
    List<Row> rows) {
  public LimitsTable {
    by = List.copyOf(by);
    drivers = List.copyOf(drivers);
    rows = List.copyOf(rows);
  }

  /** Whether limits follow two quantities and are straight between the rows. */
  public boolean slopesBothWays() {
    return drivers.size() > 1 && between.equals(Optional.of(Between.INTERPOLATE));
  }

  /** How limits between two rows are found. */
  public enum Between {
    /** On the straight line between the rows next to the value, on a plane with two drivers. */
    INTERPOLATE,
    /** Each row holds over its own stretch; an end that two rows share belongs to the upper row. */
    STEP
  }

  /**
   * A line of the table.
   *
   * @param place where it stands
   * @param builds the equipment it holds for
   * @param at where on each driver it stands: a point to interpolate, a stretch to step; empty
   *     where the row holds wherever they are
   * @param low lowest value within limits, in the reading's unit; absent: nothing is below
   * @param high highest value within limits, in the reading's unit; absent: nothing is above
   */
  public record Row(
      Place place,
      Condition builds,
      List<Interval> at,
      Optional<BigFraction> low,
      Optional<BigFraction> high) {
    public Row {
      at = List.copyOf(at);
    }
  }
}
