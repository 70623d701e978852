package io.faultwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Elsewhere;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.model.Case;
import io.faultwright.model.FaultPair;
import io.faultwright.pipeline.TellingApart;
import io.faultwright.pipeline.TellingApart.Ahead;
import io.faultwright.pipeline.Watch;
import io.faultwright.report.Ink;
import io.faultwright.report.ProspectText;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which readings tell the faults of the demo handbook apart. */
class TellingApartTest {
  private static final Sources DEMO = FolderReader.read(Path.of("..", "rules", "walk-in-freezers"));
  private static final TellingApart FREEZERS = new TellingApart(DEMO, Watch.NOBODY);
  private static final List<SymptomFaults> ALL =
      FREEZERS.distinctions(Optional.empty(), List.of()).symptoms();

  /** Every other pair would be a contradiction, and the demo has none. */
  @Test
  void onlyWhatIsDeclaredTogetherIsNotAlwaysToldApart() {
    Set<String> together =
        ALL.stream()
            .flatMap(symptom -> symptom.pairs().stream())
            .filter(pair -> !pair.always())
            .peek(pair -> assertTrue(pair.overlap().orElseThrow().declared()))
            .peek(pair -> assertTrue(pair.overlap().orElseThrow().replayed()))
            .map(pair -> pair.faults().one() + " " + pair.faults().other())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        Set.of(
            "condenser-dirty condenser-fan-control-failed",
            "condenser-dirty condenser-fan-motor-failed",
            "defrost-relay-welded evaporator-fan-motor-failed",
            "defrost-relay-welded fan-iced",
            "door-dropped gasket-leaks",
            "drain-dirty drain-trap-cold",
            "drain-dirty drain-trap-missing",
            "drain-slope-wrong drain-trap-cold",
            "drain-slope-wrong drain-trap-missing",
            "drip-time-short fan-delay-short",
            "evaporator-fan-motor-failed hot-gas-valve-leaks",
            "fan-iced hot-gas-valve-leaks"),
        together);
  }

  /** Common practice, no source: a drop over the drier shows that it throttles. */
  @Test
  void aBlockedDrierIsKnownByItsDropAlone() {
    Distinction pair = pair("cooling-capacity-low", "drier-blocked", "expansion-valve-starved");
    assertEquals(Set.of("drier-drop"), pair.cheapest().orElseThrow().readings());
    assertEquals(Set.of("drier-drop"), pair.needed());
  }

  /** The drop is outside, the subcooling is not; the trainer may want to ask for it here too. */
  @Test
  void anotherSymptomKnowsAnEasierReading() {
    Distinction pair = pair("cooling-capacity-low", "charge-low", "drier-blocked");
    assertEquals(
        Set.of("liquid-line-temperature", "liquid-pressure"),
        pair.cheapest().orElseThrow().readings());
    assertEquals(Set.of("subcooling"), pair.cheapest().orElseThrow().computed());
    Elsewhere easier = pair.elsewhere().orElseThrow();
    assertEquals("low-suction-pressure", easier.symptom());
    assertEquals(Set.of("drier-drop"), easier.taking().readings());
  }

  @Test
  void oneSymptomAloneKnowsWhatTheOthersDo() {
    List<SymptomFaults> one =
        FREEZERS.distinctions(Optional.of("energy-use-high"), List.of()).symptoms();
    assertEquals(
        ALL.stream().filter(found -> found.symptom().equals("energy-use-high")).toList(), one);
  }

  /** Every example that it names was confirmed by Drools, or there would be no answer. */
  @Test
  void everyHalfTakenCaseIsToldWhatToReadNext() {
    for (Case recorded : FREEZERS.knowledge().cases().values()) {
      if (recorded.expect().isEmpty()) {
        Ahead ahead = FREEZERS.ahead(recorded.id());
        List<Step> steps = ahead.prospect().steps();
        assertTrue(ahead.prospect().open().size() != 1, recorded.id());
        double least = steps.isEmpty() ? 0 : steps.get(0).expected().orElseThrow().weighted();
        assertEquals(ahead.prospect().open().isEmpty(), steps.isEmpty(), recorded.id());
        assertTrue(
            steps.stream().allMatch(step -> step.expected().orElseThrow().weighted() >= least),
            recorded.id());
      }
    }
  }

  @Test
  void cautionsStandBeforeTheNextReading() {
    Ahead ahead = FREEZERS.ahead("tarn-30-capacity-line-not-read");
    String text =
        new ProspectText(FREEZERS.knowledge(), Ink.PLAIN).write(ahead.prospect(), ahead.verdict());
    int caution = text.indexOf("CAUTION: The suction line");
    assertTrue(0 < caution && caution < text.indexOf("  next "), text);
  }

  private static Distinction pair(String symptom, String one, String other) {
    return ALL.stream()
        .filter(found -> found.symptom().equals(symptom))
        .flatMap(found -> found.pairs().stream())
        .filter(found -> found.faults().equals(FaultPair.of(one, other)))
        .findFirst()
        .orElseThrow();
  }
}
