package io.faultwright.cli;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.piece.Fingerprint;
import io.faultwright.piece.Workshop;
import io.faultwright.pipeline.KnownProofs;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Knows what was proved when a handbook was published before. */
final class PublishedProofs implements KnownProofs {
  private final Workshop workshop;
  private final Map<String, Fingerprint> asked = new ConcurrentHashMap<>();

  PublishedProofs(Workshop workshop) {
    this.workshop = workshop;
  }

  @Override
  public boolean holds(Symptom symptom, Supplier<KnowledgeBase> excerpt) {
    KnowledgeBase kb = excerpt.get();
    if (kb.handbook().signOffs().asked()) {
      return false;
    }
    Fingerprint inputs = workshop.fingerprints().of(symptom.id(), kb);
    asked.put(name(symptom.id()), inputs);
    return workshop.knew(name(symptom.id()), inputs);
  }

  /** Notes for the next publish that all that was asked for is without error. */
  void confirm() {
    asked.forEach(workshop::note);
  }

  private static String name(String symptom) {
    return "proof of " + symptom;
  }
}
