package io.faultwright.analysis.change;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Truth;
import io.faultwright.change.Outcome;
import io.faultwright.change.Outcome.Kind;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** For every outcome a side can have: its situations. Together they are all that there are. */
final class OutcomeSets {
  private final SymptomSpace rules;
  private final Diagrams diagrams;
  private final SortedMap<Outcome, Integer> sets = new TreeMap<>();

  private OutcomeSets(SymptomSpace rules) {
    this.rules = rules;
    this.diagrams = rules.space().diagrams();
  }

  /**
   * The outcomes of one side.
   *
   * @param space both sides' situations
   * @param offered those on whose equipment the symptom is offered
   * @param recognised where what defines the complaint holds or may hold
   * @param rules the symptom's rules over the offered situations
   */
  static SortedMap<Outcome, Integer> of(
      Space space, int offered, Truth recognised, SymptomSpace rules) {
    OutcomeSets outcomes = new OutcomeSets(rules);
    Diagrams diagrams = space.diagrams();
    int real = diagrams.and(space.consistent(), offered);
    int shown = diagrams.and(rules.possible(), recognised.mayBeTrue());
    outcomes.put(Outcome.of(Kind.NOT_OFFERED), diagrams.minus(space.consistent(), offered));
    outcomes.put(Outcome.of(Kind.CANNOT_HAPPEN), diagrams.minus(real, rules.possible()));
    outcomes.put(Outcome.of(Kind.NOT_RECOGNISED), diagrams.minus(rules.possible(), shown));
    outcomes.put(Outcome.of(Kind.UNANSWERED), outcomes.answered(outcomes.sent(shown), shown));
    outcomes.splitMissing();
    return outcomes.sets;
  }

  private void put(Outcome outcome, int situations) {
    if (situations != Diagrams.NONE) {
      sets.merge(outcome, situations, diagrams::or);
    }
  }

  /** Puts what {@code first} sends elsewhere; returns the rest. */
  private int sent(int shown) {
    int left = shown;
    List<Integer> referrals = rules.referrals();
    for (int i = 0; i < referrals.size(); i++) {
      int sent = diagrams.and(left, referrals.get(i));
      String to = rules.symptom().first().get(i).otherwise();
      put(new Outcome(Kind.SENT_ELSEWHERE, Sorted.set(List.of(new Answer.OfReferral(to)))), sent);
      left = diagrams.minus(left, sent);
    }
    return left;
  }

  /** Puts what the rules answer; returns the rest. */
  private int answered(int left, int shown) {
    Map<SortedSet<Answer>, Integer> parts = new LinkedHashMap<>();
    parts.put(Sorted.set(List.<Answer>of()), diagrams.and(rules.workable(), shown));
    rules.answers().forEach((answer, where) -> split(parts, answer, where));
    int rest = left;
    for (Map.Entry<SortedSet<Answer>, Integer> part : parts.entrySet()) {
      if (!part.getKey().isEmpty()) {
        putAnswers(part.getKey(), part.getValue());
        rest = diagrams.minus(rest, part.getValue());
      }
    }
    return rest;
  }

  private void split(Map<SortedSet<Answer>, Integer> parts, Answer answer, int where) {
    for (Map.Entry<SortedSet<Answer>, Integer> part : List.copyOf(parts.entrySet())) {
      int inside = diagrams.and(part.getValue(), where);
      if (inside != Diagrams.NONE) {
        SortedSet<Answer> more = new TreeSet<>(part.getKey());
        more.add(answer);
        int outside = diagrams.minus(part.getValue(), inside);
        parts.put(part.getKey(), outside);
        parts.put(more, inside);
      }
    }
  }

  private void putAnswers(SortedSet<Answer> answers, int where) {
    int clashing = clash(answers) ? where : diagrams.and(where, excluded(answers));
    put(new Outcome(Kind.CONTRADICTION, answers), clashing);
    put(new Outcome(Kind.ANSWERED, answers), diagrams.minus(where, clashing));
  }

  /** Where a rule excludes one of these faults. */
  private int excluded(Set<Answer> answers) {
    int excluded = Diagrams.NONE;
    for (Rule rule : rules.symptom().rules().values()) {
      if (rule.conclusion() instanceof Conclusion.Exclude exclude
          && exclude.faults().stream().map(Answer.OfFault::new).anyMatch(answers::contains)) {
        excluded = diagrams.or(excluded, rules.fires(rule.id()));
      }
    }
    return excluded;
  }

  private boolean clash(SortedSet<Answer> answers) {
    return answers.stream()
        .anyMatch(a -> answers.stream().anyMatch(b -> !a.equals(b) && !mayStandTogether(a, b)));
  }

  private boolean mayStandTogether(Answer a, Answer b) {
    Symptom symptom = rules.symptom();
    return a instanceof Answer.OfFault
        && b instanceof Answer.OfFault
        && symptom.together().contains(FaultPair.of(a.name(), b.name()));
  }

  /** Tells what no rule answers from what cannot be answered without a figure. */
  private void splitMissing() {
    Outcome unanswered = Outcome.of(Kind.UNANSWERED);
    int all = sets.getOrDefault(unanswered, Diagrams.NONE);
    if (all != Diagrams.NONE) {
      int missing = diagrams.and(all, new MissingLimits(rules).undecided());
      sets.remove(unanswered);
      put(Outcome.of(Kind.NO_FIGURE), missing);
      put(unanswered, diagrams.minus(all, missing));
    }
  }
}
