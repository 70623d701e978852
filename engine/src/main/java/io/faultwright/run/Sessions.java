package io.faultwright.run;

import io.faultwright.compile.Certainty;
import io.faultwright.compile.Facts;
import io.faultwright.compile.View;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;

/**
 * Drools sessions of one set of rules, kept for reuse; one for each thread that runs at once. They
 * stay thread-safe, though each has one thread at a time: what they share is built at its first
 * use, and without the locks of Drools two threads spoil it. Firing directly is no option either:
 * it keeps every match, and so every situation, for good.
 */
final class Sessions {
  private final KieBase rules;
  private final Queue<KieSession> idle = new ConcurrentLinkedQueue<>();

  Sessions(KieBase rules) {
    this.rules = rules;
  }

  /**
   * Lets the rules decide every statement about the facts. Where no test is unknown, what holds
   * possibly holds surely, and one look is enough.
   */
  void decide(Facts facts) {
    KieSession waiting = idle.poll();
    KieSession session = waiting == null ? rules.newKieSession() : waiting;
    fire(session, new View(facts, Certainty.SURELY));
    if (facts.inDoubt()) {
      fire(session, new View(facts, Certainty.POSSIBLY));
    }
    idle.add(session);
  }

  private static void fire(KieSession session, View view) {
    FactHandle handle = session.insert(view);
    session.fireAllRules();
    session.delete(handle);
  }
}
