package io.faultwright.flow;

import io.faultwright.analysis.order.Decisions;
import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Question;
import io.faultwright.model.KnowledgeBase;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** What has been read on every way to a check, so that it need not be read again. */
final class KnownSubjects {
  private final KnowledgeBase knowledge;
  private final Decisions decisions;
  private final Map<Integer, SortedSet<String>> before = new HashMap<>();

  KnownSubjects(KnowledgeBase knowledge, Decisions decisions) {
    this.knowledge = knowledge;
    this.decisions = decisions;
  }

  /** For each decision below a root, the readings and facts read on every way from there. */
  Map<Integer, SortedSet<String>> before(int root) {
    before.put(root, new TreeSet<>());
    for (int number = root; number >= 0; number--) {
      if (before.containsKey(number) && decisions.get(number) instanceof Asked asked) {
        SortedSet<String> after = new TreeSet<>(before.get(number));
        after.addAll(read(knowledge, asked.question()));
        asked.arms().forEach(arm -> meet(arm, after));
      }
    }
    return before;
  }

  /**
   * What is read for a question, with what it is computed from and what its limits follow; nothing
   * where it only asks whether something can be read.
   */
  static SortedSet<String> read(KnowledgeBase knowledge, Question question) {
    SortedSet<String> read = new TreeSet<>();
    if (!question.takingOnly()) {
      add(knowledge, question.subject(), read);
      if (question.limits()) {
        knowledge
            .limits()
            .get(question.subject())
            .drivers()
            .forEach(id -> add(knowledge, id, read));
      }
    }
    return read;
  }

  private static void add(KnowledgeBase knowledge, String subject, SortedSet<String> read) {
    read.add(subject);
    if (knowledge.readings().containsKey(subject)) {
      knowledge
          .readings()
          .get(subject)
          .operands()
          .forEach(operand -> add(knowledge, operand, read));
    }
  }

  /** Decisions have higher numbers than those they lead to, so that all ways in come first. */
  private void meet(Arm arm, SortedSet<String> after) {
    before.merge(
        arm.next(),
        new TreeSet<>(after),
        (one, other) -> {
          one.retainAll(other);
          return one;
        });
  }
}
