package io.faultwright.pipeline;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Set;

/**
 * What is left to check.
 *
 * @param scope how much is to be checked
 * @param proved ids of the symptoms that are known to be without error
 */
record Due(Scope scope, Set<String> proved) {
  Due {
    proved = Set.copyOf(proved);
  }

  List<Symptom> symptoms(KnowledgeBase kb) {
    return scope.symptoms(kb).stream().filter(found -> concerns(found.id())).toList();
  }

  boolean concerns(String symptom) {
    return scope.concerns(symptom) && !proved.contains(symptom);
  }

  /** Whether a finding is about a symptom that is left, or about no symptom in particular. */
  boolean concerns(Finding finding) {
    return finding.symptom().map(this::concerns).orElse(true);
  }
}
