package io.faultwright.compile;

import io.faultwright.model.Truth;

/**
 * The fact that Drools matches: a situation, looked at in one way. Looked at in both, the same
 * rules tell what holds surely and what possibly.
 *
 * @param facts the situation, and what is decided about it
 * @param certainty how it is looked at
 */
public record View(Facts facts, Certainty certainty) {
  /**
   * Whether a test comes out as wanted. One on a reading that the machine does not have never does,
   * whatever is wanted.
   */
  boolean met(int test, Truth wanted) {
    return certainty.met(facts.truth(test), wanted) && facts.exists(test);
  }

  void decide(int statement) {
    facts.decide(statement, certainty.verdict());
  }
}
