package io.faultwright.analysis.mutation;

import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Truth;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Symptom.First;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Where changed rules of a symptom give another answer, exactly; nowhere is a proof. */
final class RuleDifference {
  private final Symptom symptom;
  private final SymptomSpace whole;
  private final Space space;
  private final Diagrams diagrams;

  /**
   * @param others the symptom, changed in a way each
   */
  RuleDifference(KnowledgeBase kb, Symptom symptom, Collection<Symptom> others, Deadline deadline) {
    this.symptom = symptom;
    List<Condition> further = new ArrayList<>();
    for (Symptom other : others) {
      other.rules().values().stream()
          .filter(rule -> symptom.rules().get(rule.id()) != rule)
          .forEach(rule -> further.add(rule.when()));
      other.first().stream()
          .filter(first -> !symptom.first().contains(first))
          .forEach(first -> further.add(first.when()));
    }
    this.whole = SymptomSpace.of(kb, symptom, further, deadline);
    this.space = whole.space();
    this.diagrams = space.diagrams();
  }

  /** A situation in which a changed symptom gives another answer; absent where none does. */
  Optional<Situation> with(Symptom changed) {
    int where = diagrams.and(whole.possible(), touched(changed));
    if (where == Diagrams.NONE) {
      return Optional.empty();
    }
    SortedMap<Answer, Integer> before = answers(symptom, where);
    SortedMap<Answer, Integer> after = answers(changed, where);
    int different = Diagrams.NONE;
    TreeSet<Answer> all = new TreeSet<>(before.keySet());
    all.addAll(after.keySet());
    for (Answer answer : all) {
      int here = before.getOrDefault(answer, Diagrams.NONE);
      int there = after.getOrDefault(answer, Diagrams.NONE);
      different = diagrams.or(different, either(here, there));
    }
    return different == Diagrams.NONE
        ? Optional.empty()
        : Optional.of(new Witness(space).of(different));
  }

  /** In one of the sets and not in the other. */
  private int either(int one, int other) {
    return diagrams.or(diagrams.minus(one, other), diagrams.minus(other, one));
  }

  /** Where a change can matter: where what it changed comes out otherwise. */
  private int touched(Symptom changed) {
    if (!changed.first().equals(symptom.first())) {
      return Diagrams.ALL;
    }
    int touched = Diagrams.NONE;
    for (Rule rule : symptom.rules().values()) {
      Rule other = changed.rules().get(rule.id());
      if (other == null || !other.conclusion().equals(rule.conclusion())) {
        touched = diagrams.or(touched, space.truth(rule.when()).mayBeTrue());
      } else if (other != rule) {
        Truth here = space.truth(rule.when());
        Truth there = space.truth(other.when());
        touched = diagrams.or(touched, either(here.isTrue(), there.isTrue()));
        touched = diagrams.or(touched, either(here.mayBeTrue(), there.mayBeTrue()));
      }
    }
    return touched;
  }

  private SortedMap<Answer, Integer> answers(Symptom rules, int where) {
    SymptomSpace part = SymptomSpace.within(space, rules, whole.nevers(), where);
    SortedMap<Answer, Integer> answers = new TreeMap<>(part.answers());
    List<First> first = rules.first();
    for (int i = 0; i < first.size(); i++) {
      Answer sent = new Answer.OfReferral(first.get(i).otherwise());
      answers.merge(sent, part.referrals().get(i), diagrams::or);
    }
    return answers;
  }
}
