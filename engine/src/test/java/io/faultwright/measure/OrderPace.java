package io.faultwright.measure;

import io.faultwright.sequence.Order;
import io.faultwright.sequence.Orders;
import io.faultwright.sequence.Patience;
import io.faultwright.sequence.Problem;
import java.util.Locale;

/** Prints how long it takes to find the cheapest order of checks, and how near it is to proved. */
public final class OrderPace {
  private OrderPace() {}

  /**
   * Measures.
   *
   * @param arguments readings, faults, most answers of a reading, seconds, how many problems, and
   *     `anywhere` where hazardous checks need not come last
   */
  public static void main(String[] arguments) {
    int readings = Integer.parseInt(arguments[0]);
    int faults = Integer.parseInt(arguments[1]);
    int most = Integer.parseInt(arguments[2]);
    boolean anywhere = arguments.length > 5 && arguments[5].equals("anywhere");
    double seconds = Double.parseDouble(arguments[3]);
    for (int seed = 1; seed <= Integer.parseInt(arguments[4]); seed++) {
      Problem problem = new OrderProblems(seed).problem(readings, faults, most, anywhere);
      long start = System.nanoTime();
      Order order =
          Orders.cheapest(
              problem,
              new Patience(
                  Long.MAX_VALUE,
                  0,
                  () -> System.nanoTime() - start > seconds * 1_000_000_000L,
                  Long.MAX_VALUE));
      double took = (System.nanoTime() - start) / 1e9;
      System.out.println(
          String.format(
              Locale.ROOT,
              "%d x %d, up to %d answers, seed %d: %.3f weighted minutes, gap %.2f %%, %d sets, %.2f s; quick order %.3f",
              readings,
              faults,
              most,
              seed,
              order.weighted(),
              100 * order.gap(),
              order.effort(),
              took,
              Orders.quick(problem).weighted()));
    }
  }
}
