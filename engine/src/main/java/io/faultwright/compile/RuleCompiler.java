package io.faultwright.compile;

import io.faultwright.model.KnowledgeBase;

/** Compiles a knowledge base to a Drools program. */
public final class RuleCompiler {
  private RuleCompiler() {}

  public static Program compile(KnowledgeBase base) {
    return new Program(base);
  }
}
