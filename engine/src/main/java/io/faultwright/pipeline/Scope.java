package io.faultwright.pipeline;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * How much to check.
 *
 * @param symptom the only symptom to check; absent: all
 * @param time how long the analyses may take; absent: as long as they need
 */
public record Scope(Optional<String> symptom, Optional<Duration> time) {
  /** Everything, for as long as it takes. */
  public static final Scope ALL = new Scope(Optional.empty(), Optional.empty());

  /**
   * Refuses a symptom that is not there.
   *
   * @throws Unreadable with the nearest name
   */
  void requireSymptom(KnowledgeBase kb) {
    symptom
        .filter(id -> !kb.symptoms().containsKey(id))
        .ifPresent(
            id -> {
              String help = NearMatch.help(id, kb.symptoms().keySet());
              String message = "there is no symptom `" + id + "`";
              throw new Unreadable(List.of(new Problem(List.of(), message, help)));
            });
  }

  List<Symptom> symptoms(KnowledgeBase kb) {
    return kb.symptoms().values().stream().filter(found -> concerns(found.id())).toList();
  }

  boolean concerns(String id) {
    return symptom.map(id::equals).orElse(true);
  }

  /** Whether a finding is about the symptom, or about no symptom in particular. */
  boolean concerns(Finding finding) {
    return finding.symptom().map(this::concerns).orElse(true);
  }
}
