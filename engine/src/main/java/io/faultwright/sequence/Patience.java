package io.faultwright.sequence;

import java.util.function.BooleanSupplier;

/**
 * When to stop looking for a cheaper order.
 *
 * @param effort after looking into so many sets of situations; the same problem then has the same
 *     answer everywhere
 * @param gap once no order can be cheaper by more than this share
 * @param over asked again and again whether the time is over
 * @param most not more sets than this are looked into at all; beyond, there is no order
 */
public record Patience(long effort, double gap, BooleanSupplier over, long most) {
  /** Until the cheapest order is proved. */
  public static final Patience ENDLESS = of(Long.MAX_VALUE);

  /** Until so many sets of situations were looked into. */
  public static Patience of(long effort) {
    return new Patience(effort, 0, () -> false, Long.MAX_VALUE);
  }

  /** Without an order where even a quick one needs more sets than this. */
  public Patience atMost(long sets) {
    return new Patience(effort, gap, over, sets);
  }
}
