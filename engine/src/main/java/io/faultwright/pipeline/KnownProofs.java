package io.faultwright.pipeline;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.function.Supplier;

/** Knows which symptoms this very program has found to be without error before. */
public interface KnownProofs {
  /** Everything is proved anew. */
  KnownProofs NONE = (symptom, excerpt) -> false;

  /**
   * Whether neither the proof of the symptom nor one of its cases found an error.
   *
   * @param excerpt all that the proof and the cases depend on
   */
  boolean holds(Symptom symptom, Supplier<KnowledgeBase> excerpt);
}
