package io.faultwright.report;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A report with every shape of finding, over a file with tabs and wide characters. */
final class SampleReport {
  private static final String FILE = "rules/eis.yaml";

  static final Sources SOURCES =
      new Sources(
          List.of(
              SourceFile.of(
                  FILE,
                  """
                  symptoms:
                    ice-left:
                      rules:
                        valve-stuck:
                          when: { ice: untouched }
                        fan-dead:
                          when: { fan: no }
                  readings:
                    pressure: {}
                  """)));

  private SampleReport() {}

  static CheckReport build() {
    return new CheckReport(
        "Sample",
        List.of(unused(), gap(), contradiction()),
        List.of(
            new SymptomSummary(
                "room-warm",
                4,
                Optional.of(true),
                Optional.of(true),
                SymptomSummary.Proof.EXACT,
                Optional.of(new Share(0, 0, true)),
                Optional.of(new Share(0, 0, true)),
                Optional.of(new Share(0.0301, 0.0301, true))),
            new SymptomSummary(
                "ice-left",
                2,
                Optional.of(false),
                Optional.empty(),
                SymptomSummary.Proof.PARTIAL,
                Optional.of(new Share(0.125, 0.125, true)),
                Optional.of(new Share(0.01, 0.2, false)),
                Optional.empty())),
        List.of(
            new ChartSummary(
                "warm-by-hand", "room-warm", Optional.of(true), Optional.of(longWay())),
            new ChartSummary("warm-again", "room-warm", Optional.of(true), Optional.of(asCheap())),
            new ChartSummary("warm-risky", "room-warm", Optional.of(true), Optional.of(risky())),
            new ChartSummary("ice-by-hand", "ice-left", Optional.of(false), Optional.empty()),
            new ChartSummary("ice-late", "ice-left", Optional.empty(), Optional.empty())),
        80,
        1);
  }

  private static ChartEffort longWay() {
    return new ChartEffort(
        new ChartEffort.Average(21.44, 31.25),
        new ChartEffort.Average(14.2, 18),
        18,
        13.25,
        Optional.of(
            new ChartEffort.Detour("valve", "voltage", Optional.of("ice-after"), true, 9.5)),
        Optional.of(new ChartEffort.Hazard("valve", "voltage", "ice-after")));
  }

  private static ChartEffort asCheap() {
    ChartEffort.Average both = new ChartEffort.Average(14.2, 18);
    return new ChartEffort(both, both, 18, 0, Optional.empty(), Optional.empty());
  }

  /** The cheapest order is not proved to be that. */
  private static ChartEffort risky() {
    return new ChartEffort(
        new ChartEffort.Average(12, 19.96),
        new ChartEffort.Average(11, 16),
        15.04,
        3.96,
        Optional.of(new ChartEffort.Detour("fan", "fan-runs", Optional.empty(), false, 1.5)),
        Optional.empty());
  }

  private static Finding unused() {
    return Finding.of(
        FindingKind.UNUSED_READING,
        new Place(FILE, 9, 3, 8),
        "no condition asks for `pressure`",
        "use it in a rule, or take it out");
  }

  private static Finding gap() {
    return Finding.of(
            FindingKind.GAP,
            new Place(FILE, 2, 3, 8),
            "no rule answers some situations of `ice-left`",
            "add a rule for them, or escalate")
        .in("ice-left", List.of())
        .shownBy(
            witness("loose"),
            List.of(new RegionTest("ice", "loose"), new RegionTest("room", "above -18 °C")),
            Optional.of(new Share(0.031, 0.031, true)))
        .confirmed();
  }

  private static Finding contradiction() {
    Finding finding =
        new Finding(
            FindingKind.CONTRADICTION,
            Optional.of("ice-left"),
            List.of("fan-dead", "valve-stuck"),
            List.of(new Place(FILE, 4, 7, 11), new Place(FILE, 6, 7, 8)),
            "`fan-dead` and `valve-stuck` conclude different faults at once",
            "say which one counts with `instead-of`, or allow both with `together`",
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false);
    return finding.shownBy(
        witness("untouched"), List.of(), Optional.of(new Share(0.2, 0.4, false)));
  }

  private static Situation witness(String ice) {
    return new Situation(
        new TreeMap<>(Map.of("model", "FL-12G1", "software", "2.10")),
        new TreeMap<>(
            Map.of(
                "ice", new Value.Word(ice),
                "fan", new Value.NotTaken(),
                "room", new Value.Number(Decimals.parse("-12.50")))));
  }
}
