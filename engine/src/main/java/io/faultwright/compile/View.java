package io.faultwright.compile;

/**
 * The fact that Drools matches: a situation, looked at in one way. Looked at in both, the same
 * rules tell what holds surely and what possibly.
 *
 * @param facts the situation, and what is decided about it
 * @param certainty how it is looked at
 */
public record View(Facts facts, Certainty certainty) {
  boolean met(int test) {
    return certainty.met(facts.truth(test));
  }

  View below() {
    return new View(facts, certainty.below());
  }

  void decide(int statement) {
    facts.decide(statement, certainty.verdict());
  }
}
