package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Low and high for a reading.
 *
 * @param reading id of the quantity it judges
 * @param place where it stands
 * @param by the columns in the written order: equipment facts, and at most one quantity
 * @param driver id of the quantity the limits follow, if any
 * @param between how values between rows are found; absent without a driver
 * @param rows in the written order
 */
public record LimitsTable(
    String reading,
    Place place,
    List<String> by,
    Optional<String> driver,
    Optional<Between> between,
    List<Row> rows) {
  public LimitsTable {
    by = List.copyOf(by);
    rows = List.copyOf(rows);
  }

  /** How limits between two rows are found. */
  public enum Between {
    /** On the straight line between the two rows next to the value. */
    INTERPOLATE,
    /** Each row holds over its own stretch; an end that two rows share belongs to the upper row. */
    STEP
  }

  /**
   * A line of the table.
   *
   * @param place where it stands
   * @param builds the equipment it holds for
   * @param at where on the driver it stands: a point to interpolate, a stretch to step
   * @param low lowest value within limits, in the reading's unit; absent: nothing is below
   * @param high highest value within limits, in the reading's unit; absent: nothing is above
   */
  public record Row(
      Place place,
      Condition builds,
      Optional<Interval> at,
      Optional<BigFraction> low,
      Optional<BigFraction> high) {}

  /** Ids of the readings the table depends on besides its own: none or the driver. */
  public SortedSet<String> drivers() {
    return Sorted.set(driver.stream().toList());
  }
}
