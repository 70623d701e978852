package io.faultwright.report;

import io.faultwright.report.ChartEffort.Average;
import io.faultwright.report.ChartEffort.Detour;
import io.faultwright.report.ChartEffort.Hazard;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What an authored chart takes beside the cheapest order, in words. */
final class ChartEffortText {
  private ChartEffortText() {}

  /** A few lines below the proof; none where nothing is known. */
  static String of(ChartSummary chart) {
    return chart
        .effort()
        .map(
            effort ->
                "  "
                    + chart.id()
                    + ": "
                    + averages(effort)
                    + effort.detour().map(detour -> detour(detour, effort)).orElse("")
                    + effort.hazard().map(ChartEffortText::hazard).orElse(""))
        .orElse("");
  }

  private static String averages(ChartEffort effort) {
    String own = average(effort.chart(), "") + " on average, ";
    if (effort.difference() == 0 && effort.exact()) {
      return own + "as in the cheapest order\n";
    }
    String bound = effort.exact() ? "" : ", at least " + bound(effort.atLeast()) + " in any";
    boolean cheaper = effort.difference() < 0;
    return own
        + (cheaper ? "less than " : "against ")
        + average(effort.cheapest(), bound)
        + " in the cheapest order"
        + (effort.exact() ? "" : " that was found")
        + (cheaper ? " of those that the symptom allows\n" : "\n");
  }

  private static String average(Average average, String more) {
    return number(average.minutes()) + " min (effort " + number(average.effort()) + more + ")";
  }

  private static String detour(Detour detour, ChartEffort effort) {
    boolean most = 2 * detour.effort() > effort.difference();
    return "    "
        + (most ? "most" : "the largest part")
        + " of the difference is made by asking `"
        + detour.check()
        + "` "
        + detour
            .better()
            .map(better -> (detour.later() ? "before `" : "instead of `") + better + "`")
            .orElse("where nothing is left to ask")
        + " (step `"
        + detour.step()
        + "`)\n";
  }

  private static String hazard(Hazard hazard) {
    return "    it asks `"
        + hazard.check()
        + "` (step `"
        + hazard.step()
        + "`) before `"
        + hazard.before()
        + "`, though hazardous checks come last\n";
  }

  /** Rounded so that it stays a bound. */
  private static String bound(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.FLOOR).toPlainString();
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
