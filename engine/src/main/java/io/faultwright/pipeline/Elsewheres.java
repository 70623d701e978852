package io.faultwright.pipeline;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Elsewhere;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.model.FaultPair;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What other symptoms know of two faults that one symptom tells apart with more effort. */
final class Elsewheres {
  private static final Comparator<Elsewhere> EASIEST =
      Comparator.comparing((Elsewhere found) -> found.taking().effort())
          .thenComparing(Elsewhere::symptom);

  private final Map<FaultPair, List<Elsewhere>> known = new TreeMap<>();

  Elsewheres(Collection<SymptomFaults> symptoms) {
    for (SymptomFaults symptom : symptoms) {
      for (Distinction pair : symptom.pairs()) {
        pair.cheapest()
            .filter(taking -> pair.always())
            .map(taking -> new Elsewhere(symptom.symptom(), taking))
            .ifPresent(
                found -> known.computeIfAbsent(pair.faults(), k -> new ArrayList<>()).add(found));
      }
    }
  }

  /** The symptom with, for each pair, the easier readings of another one. */
  SymptomFaults added(SymptomFaults symptom) {
    return symptom.with(pair -> pair.with(easier(symptom.symptom(), pair)));
  }

  private Optional<Elsewhere> easier(String symptom, Distinction pair) {
    return known.getOrDefault(pair.faults(), List.of()).stream()
        .filter(found -> !found.symptom().equals(symptom) && pair.sameMachine())
        .filter(found -> !pair.always() || isEasier(found, pair))
        .min(EASIEST);
  }

  private static boolean isEasier(Elsewhere found, Distinction pair) {
    return found.taking().effort().compareTo(pair.cheapest().orElseThrow().effort()) < 0;
  }
}
