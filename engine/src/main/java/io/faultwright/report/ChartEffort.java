package io.faultwright.report;

import java.util.Optional;

/**
 * What an authored chart takes on average, beside the cheapest order of checks.
 *
 * @param chart what the chart takes
 * @param cheapest what the cheapest order takes that was found
 * @param atLeast no order takes less effort than this; the cheapest order's where that is proved
 * @param difference effort of the chart less that of the cheapest order; 0 where only rounding is
 *     between them
 * @param detour where the chart loses most
 * @param hazard what it asks early though the symptom wants it last
 */
public record ChartEffort(
    Average chart,
    Average cheapest,
    double atLeast,
    double difference,
    Optional<Detour> detour,
    Optional<Hazard> hazard) {
  /**
   * An average over the situations, each as likely as its outcome.
   *
   * @param minutes as they pass
   * @param effort minutes, each counted as its access says
   */
  public record Average(double minutes, double effort) {}

  /**
   * Where a chart loses most.
   *
   * @param step id of the step
   * @param check what it asks for
   * @param better what the cheapest order asks there; absent where nothing is left to ask
   * @param later whether that order asks for the step's reading all the same, later
   * @param effort how much effort is lost there
   */
  public record Detour(
      String step, String check, Optional<String> better, boolean later, double effort) {}

  /**
   * A hazardous check before an easier one.
   *
   * @param step id of the step
   * @param check what it asks for
   * @param before what is asked after it
   */
  public record Hazard(String step, String check, String before) {}

  /** Whether no cheaper order than the one found is possible. */
  public boolean exact() {
    return atLeast >= cheapest.effort();
  }
}
