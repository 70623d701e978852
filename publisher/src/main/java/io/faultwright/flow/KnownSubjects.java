package io.faultwright.flow;

import io.faultwright.analysis.order.Decisions;
import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What has been asked about on every way to a check, so that it need not be taken again. */
final class KnownSubjects {
  private final Decisions decisions;
  private final Map<Integer, Set<String>> before = new HashMap<>();

  KnownSubjects(Decisions decisions) {
    this.decisions = decisions;
  }

  /** For each decision below a root, the subjects asked on every way from there. */
  Map<Integer, Set<String>> before(int root) {
    before.put(root, new TreeSet<>());
    for (int number = root; number >= 0; number--) {
      if (before.containsKey(number) && decisions.get(number) instanceof Asked asked) {
        Set<String> after = new TreeSet<>(before.get(number));
        after.add(asked.question().subject());
        asked.arms().forEach(arm -> meet(arm, after));
      }
    }
    return before;
  }

  /** Decisions have higher numbers than those they lead to, so that all ways in come first. */
  private void meet(Arm arm, Set<String> after) {
    before.merge(
        arm.next(),
        new TreeSet<>(after),
        (one, other) -> {
          one.retainAll(other);
          return one;
        });
  }
}
