package io.faultwright.analysis.referral;

import io.faultwright.model.Conclusion;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** The elementary circles of the graph of symptoms that refer to each other. */
final class ReferralCircles {
  private final KnowledgeBase knowledge;
  private final List<List<Symptom>> circles = new ArrayList<>();

  private ReferralCircles(KnowledgeBase knowledge) {
    this.knowledge = knowledge;
  }

  /** Every circle once, beginning with its smallest id. */
  static List<List<Symptom>> of(KnowledgeBase knowledge) {
    ReferralCircles search = new ReferralCircles(knowledge);
    for (Symptom start : knowledge.symptoms().values()) {
      search.follow(new ArrayList<>(List.of(start)));
    }
    return search.circles;
  }

  private void follow(List<Symptom> path) {
    Symptom start = path.get(0);
    for (String next : targets(path.get(path.size() - 1))) {
      if (next.equals(start.id())) {
        circles.add(List.copyOf(path));
      } else if (next.compareTo(start.id()) > 0
          && path.stream().noneMatch(symptom -> symptom.id().equals(next))) {
        path.add(knowledge.symptoms().get(next));
        follow(path);
        path.remove(path.size() - 1);
      }
    }
  }

  private static SortedSet<String> targets(Symptom symptom) {
    SortedSet<String> targets = new TreeSet<>();
    symptom.first().forEach(first -> targets.add(first.otherwise()));
    for (Rule rule : symptom.rules().values()) {
      if (rule.conclusion() instanceof Conclusion.Refer refer) {
        targets.add(refer.symptom());
      }
    }
    return targets;
  }
}
