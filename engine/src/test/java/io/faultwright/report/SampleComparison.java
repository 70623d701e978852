package io.faultwright.report;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Comparison;
import io.faultwright.change.Comparison.Revision;
import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Concern;
import io.faultwright.change.Edit.Passage;
import io.faultwright.change.Outcome;
import io.faultwright.change.Outcome.Kind;
import io.faultwright.change.SymptomChange;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Answer;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.source.Place;
import io.faultwright.wording.SampleBase;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A comparison with something of everything. */
final class SampleComparison {
  private static final Share TENTH = new Share(0.1, 0.1, true);
  private static final RegionTest COLD = new RegionTest("room", "below -10 °C");

  private SampleComparison() {}

  static Comparison build() {
    var builds = SampleBase.build().equipment().builds();
    return new Comparison(
        "Sample handbook",
        new Revision("1", "2026-03-02"),
        new Revision("2", "2026-04-01"),
        List.of(builds.get(0)),
        List.of(builds.get(builds.size() - 1)),
        List.of(
            changed(),
            new SymptomChange("quiet", "Nothing new", List.of(), false, none(), List.of())),
        List.of(),
        List.of(
            edit(Concern.RULES, "symptom", "gone", "", "", null),
            edit(Concern.RULES, "rule", "ice-left/fan", "when", "Fan: no", "Fan: yes"),
            edit(Concern.WORK, "fault", "fan-dead", "remedy", "Replace it.", "Isolate it first."),
            edit(Concern.WORK, "fault", "fan-dead", "parts", "fan", ""),
            edit(Concern.TEXT, "handbook", "", "revision", "1", "2"),
            edit(Concern.CASES, "case", "cold", "", null, "")));
  }

  private static Share none() {
    return new Share(0, 0, true);
  }

  private static SymptomChange changed() {
    return new SymptomChange(
        "ice-left",
        "Ice is left",
        List.of(
            region(answered("fan-dead"), answered("valve-stuck", "fan-dead"), "untouched"),
            region(answered("fan-dead"), answered("valve-stuck", "fan-dead"), "loose"),
            region(sent(), Outcome.of(Kind.UNANSWERED), "none"),
            region(Outcome.of(Kind.NO_FIGURE), Outcome.of(Kind.CANNOT_HAPPEN), "none")),
        true,
        new Share(0.4, 0.4, true),
        SampleBase.build().equipment().builds());
  }

  private static Outcome answered(String... faults) {
    return new Outcome(
        faults.length > 1 ? Kind.CONTRADICTION : Kind.ANSWERED,
        Sorted.set(List.of(faults).stream().map(Answer.OfFault::new).toList()));
  }

  private static Outcome sent() {
    return new Outcome(
        Kind.SENT_ELSEWHERE, Sorted.set(List.of(new Answer.OfReferral("room-too-warm"))));
  }

  private static ChangedRegion region(Outcome before, Outcome after, String ice) {
    return new ChangedRegion(
        before,
        after,
        List.of(),
        List.of(COLD, new RegionTest("ice", ice)),
        new Situation(
            new TreeMap<>(Map.of("model", "FL-12G1", "software", "2.10")),
            new TreeMap<>(
                Map.of(
                    "ice", new Value.Word(ice), "room", new Value.Number(Decimals.parse("-12"))))),
        TENTH,
        true);
  }

  private static Edit edit(
      Concern concern, String kind, String id, String field, String before, String after) {
    return new Edit(
        concern, kind, id, field, passage(before, "old.yaml"), passage(after, "new.yaml"));
  }

  private static Optional<Passage> passage(String text, String file) {
    return Optional.ofNullable(text).map(words -> new Passage(words, new Place(file, 3, 1, 1)));
  }
}
