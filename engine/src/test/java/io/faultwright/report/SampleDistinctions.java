package io.faultwright.report;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Elsewhere;
import io.faultwright.ambiguity.Distinction.Overlap;
import io.faultwright.ambiguity.Distinction.Single;
import io.faultwright.ambiguity.Distinctions;
import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Expected;
import io.faultwright.ambiguity.Prospect.Open;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.ambiguity.Taking;
import io.faultwright.finding.Share;
import io.faultwright.model.Access;
import io.faultwright.model.Answer;
import io.faultwright.model.Effort;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** What tells faults apart, and what a case leaves open, with something of everything. */
final class SampleDistinctions {
  private static final Taking ICE = taking(Access.OUTSIDE, 1, "ice");
  private static final Taking SUPERHEAT =
      new Taking(
          set("pressure", "room"), set("superheat"), effort(Access.REFRIGERANT_CIRCUIT, 9, 30));

  private SampleDistinctions() {}

  static Distinctions build() {
    return new Distinctions(
        "Sample handbook",
        List.of(
            new SymptomFaults(
                "ice-left",
                set("fan-dead", "valve-stuck", "board-dead", "charge-low"),
                List.of(
                    told("board-dead", "charge-low", SUPERHEAT),
                    told("board-dead", "fan-dead", ICE),
                    told("board-dead", "valve-stuck", ICE),
                    machine("charge-low", "fan-dead"),
                    both("charge-low", "valve-stuck", Optional.of(ICE), true),
                    both("fan-dead", "valve-stuck", Optional.empty(), false))),
            new SymptomFaults(
                "quiet",
                set("fan-dead", "valve-stuck"),
                List.of(told("fan-dead", "valve-stuck", ICE)))));
  }

  private static Distinction told(String one, String other, Taking cheapest) {
    return new Distinction(
        FaultPair.of(one, other),
        true,
        Optional.empty(),
        Optional.of(cheapest),
        cheapest.readings(),
        List.of(
            new Single("ice", ICE, cheapest == ICE, cheapest == ICE ? 1 : 0.04),
            new Single("superheat", SUPERHEAT, false, 0.9996)),
        Optional.of(new Elsewhere("quiet", ICE)).filter(easier -> cheapest != ICE));
  }

  private static Distinction machine(String one, String other) {
    return new Distinction(
        FaultPair.of(one, other),
        false,
        Optional.empty(),
        Optional.empty(),
        set(),
        List.of(),
        Optional.empty());
  }

  private static Distinction both(
      String one, String other, Optional<Taking> cheapest, boolean declared) {
    return new Distinction(
        FaultPair.of(one, other),
        true,
        Optional.of(
            new Overlap(
                declared, set("rule-" + one, "rule-" + other), share(0.125), situation(), true)),
        cheapest,
        cheapest.map(Taking::readings).orElse(set()),
        List.of(),
        Optional.of(new Elsewhere("quiet", SUPERHEAT)));
  }

  static Prospect prospect() {
    return new Prospect(
        "cold",
        "ice-left",
        List.of(
            open(0.6, new Answer.OfFault("valve-stuck")),
            open(0.3, new Answer.OfFault("fan-dead"), new Answer.OfFault("charge-low")),
            open(0.0996, new Answer.OfReferral("quiet")),
            open(0.0004)),
        set("board-dead"),
        List.of(
            new Step(
                "superheat", SUPERHEAT, 1.25, 0.75, Optional.of(new Expected(11.52, 33.333333))),
            new Step("ice", ICE, 0.5, 0, Optional.of(new Expected(2.04, 2.04))),
            new Step(
                "family",
                new Taking(set("family"), set(), Effort.NONE),
                0.25,
                0.125,
                Optional.empty())));
  }

  /** Nothing can be as given. */
  static Prospect nothing() {
    return new Prospect("odd", "ice-left", List.of(), set("fan-dead"), List.of());
  }

  private static Open open(double likelihood, Answer... answers) {
    return new Open(Sorted.set(List.of(answers)), likelihood, situation());
  }

  private static Situation situation() {
    return new Situation(
        new TreeMap<>(Map.of("model", "FL-12G1", "software", "2.10")),
        new TreeMap<>(Map.of("ice", new Value.Word("loose"))));
  }

  private static Share share(double part) {
    return new Share(part, part, true);
  }

  private static Taking taking(Access access, int minutes, String... readings) {
    return new Taking(set(readings), set(), effort(access, minutes, minutes));
  }

  private static Effort effort(Access access, int minutes, int weighted) {
    return new Effort(access, BigFraction.of(minutes), BigFraction.of(weighted));
  }

  private static SortedSet<String> set(String... ids) {
    return Sorted.set(List.of(ids));
  }
}
