package io.faultwright.analysis.order;

import java.util.Optional;

/**
 * What an authored chart costs on average, beside the cheapest order of checks for the same
 * situations.
 *
 * @param minutes expected
 * @param weighted expected, every minute counted as its access says
 * @param cheapest the cheapest order that was found, by a technician who knows the machine
 * @param detour where the chart loses most; absent where it costs no more
 * @param hazard a hazardous check that it asks before an easier one though the symptom wants such
 *     checks last
 */
public record ChartCost(
    double minutes,
    double weighted,
    OrderCost cheapest,
    Optional<Detour> detour,
    Optional<EarlyHazard> hazard) {
  /** Differences below this share are rounding. */
  private static final double ROUNDING = 1e-6;

  /** By how much the chart costs more, weighted; negative where it costs less, 0 for none. */
  public double difference() {
    double difference = weighted - cheapest.weighted();
    return Math.abs(difference) <= ROUNDING * Math.max(weighted, 1) ? 0 : difference;
  }

  ChartCost withoutDetour() {
    return new ChartCost(minutes, weighted, cheapest, Optional.empty(), hazard);
  }

  /**
   * The step at which a chart loses most.
   *
   * @param step its id
   * @param check the reading or fact that it asks for
   * @param better what the cheapest order asks there; absent where nothing is left to ask
   * @param later whether the cheapest order still asks for the step's reading afterwards
   * @param weighted how much of the chart's cost, weighted, is made there
   */
  public record Detour(
      String step, String check, Optional<String> better, boolean later, double weighted) {}

  /**
   * A check on live voltage or in the refrigerant circuit that comes before one that needs neither.
   *
   * @param step id of its step
   * @param check what is asked there
   * @param before the easier reading that is asked afterwards
   */
  public record EarlyHazard(String step, String check, String before) {}
}
