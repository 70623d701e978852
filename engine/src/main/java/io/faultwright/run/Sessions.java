package io.faultwright.run;

import io.faultwright.compile.Facts;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;

/** Drools sessions of one set of rules, kept for reuse; one for each thread that runs at once. */
final class Sessions {
  private final KieBase rules;
  private final Queue<KieSession> idle = new ConcurrentLinkedQueue<>();

  Sessions(KieBase rules) {
    this.rules = rules;
  }

  /** Lets the rules decide every statement about the facts. */
  void decide(Facts facts) {
    KieSession waiting = idle.poll();
    KieSession session = waiting == null ? rules.newKieSession() : waiting;
    FactHandle handle = session.insert(facts);
    session.fireAllRules();
    session.delete(handle);
    idle.add(session);
  }
}
