package io.faultwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.model.FaultPair;
import io.faultwright.pipeline.TellingApart;
import io.faultwright.pipeline.Watch;
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
            "door-dropped gasket-leaks",
            "drain-slope-wrong drain-trap-cold",
            "drain-slope-wrong drain-trap-missing",
            "drip-time-short fan-delay-short"),
        together);
  }

  /** Common practice, no source: a drop over the drier shows that it throttles. */
  @Test
  void aBlockedDrierIsKnownByItsDropAlone() {
    Distinction pair = pair("cooling-capacity-low", "drier-blocked", "expansion-valve-starved");
    assertEquals(Set.of("drier-drop"), pair.cheapest().orElseThrow().readings());
    assertEquals(Set.of("drier-drop"), pair.needed());
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
