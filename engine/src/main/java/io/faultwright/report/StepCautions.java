package io.faultwright.report;

import io.faultwright.ambiguity.Taking;
import io.faultwright.model.Caution;
import io.faultwright.model.KnowledgeBase;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The cautions to heed before readings are taken, the gravest first. */
final class StepCautions {
  private final KnowledgeBase kb;

  StepCautions(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** For instance {@code WARNING: Live parts can kill. …}; each once. */
  List<String> lines(Taking taking) {
    return of(taking).map(caution -> caution.signal().name() + ": " + caution.text()).toList();
  }

  List<String> ids(Taking taking) {
    return of(taking).map(Caution::id).toList();
  }

  private Stream<Caution> of(Taking taking) {
    return taking.readings().stream()
        .filter(kb.readings()::containsKey)
        .flatMap(id -> kb.readings().get(id).cautions().stream())
        .distinct()
        .map(kb.cautions()::get)
        .sorted(Comparator.comparing(Caution::signal).thenComparing(Caution::id));
  }
}
