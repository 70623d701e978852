package io.faultwright.compile;

import io.faultwright.model.KnowledgeBase;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The rules of a knowledge base, for Drools; a symptom's are written when first asked for. */
public final class Program {
  private final KnowledgeBase base;
  private final LimitsBook limits;
  private final Map<String, SymptomProgram> programs = new ConcurrentHashMap<>();

  Program(KnowledgeBase base) {
    this.base = base;
    this.limits = new LimitsBook(base);
  }

  public LimitsBook limits() {
    return limits;
  }

  /** The program of a symptom; absent where there is no such symptom. */
  public Optional<SymptomProgram> of(String symptom) {
    return Optional.ofNullable(base.symptoms().get(symptom))
        .map(
            found ->
                programs.computeIfAbsent(symptom, id -> new SymptomProgram(base, found, limits)));
  }
}
