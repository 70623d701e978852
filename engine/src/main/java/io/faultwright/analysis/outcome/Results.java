package io.faultwright.analysis.outcome;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Answer;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** Divides the possible situations of a symptom by what is told in them. */
public final class Results {
  /** No answer at all. */
  public static final SortedSet<Answer> NOTHING = Sorted.set(List.<Answer>of());

  private final KnowledgeBase knowledge;
  private final Diagrams diagrams;

  private Results(SymptomSpace symptom) {
    this.knowledge = symptom.space().knowledge();
    this.diagrams = symptom.space().diagrams();
  }

  /** The results, in a fixed order; every possible situation is in exactly one. */
  public static List<Result> of(SymptomSpace symptom) {
    return upTo(Integer.MAX_VALUE, symptom).orElseThrow();
  }

  /**
   * As {@link #of}; empty where there are more than so many, for rules that contradict each other
   * everywhere can make more results than anybody can wait for.
   */
  public static Optional<List<Result>> upTo(int most, SymptomSpace symptom) {
    return new Results(symptom).divided(symptom, most);
  }

  private Optional<List<Result>> divided(SymptomSpace symptom, int most) {
    Map<SortedSet<Answer>, Integer> parts = new HashMap<>();
    parts.put(NOTHING, symptom.referrals().stream().reduce(symptom.possible(), diagrams::minus));
    for (Map.Entry<Answer, Integer> answer : symptom.answers().entrySet()) {
      divide(parts, answer.getKey(), answer.getValue());
      if (parts.size() > most) {
        return Optional.empty();
      }
    }
    referrals(symptom).forEach((answers, where) -> parts.merge(answers, where, diagrams::or));
    return Optional.of(
        parts.entrySet().stream()
            .filter(part -> part.getValue() != Diagrams.NONE)
            .map(part -> new Result(part.getKey(), part.getValue(), weight(part.getKey())))
            .sorted(Result.ORDER)
            .toList());
  }

  private void divide(Map<SortedSet<Answer>, Integer> parts, Answer answer, int where) {
    for (Map.Entry<SortedSet<Answer>, Integer> part : List.copyOf(parts.entrySet())) {
      SortedSet<Answer> more = new TreeSet<>(part.getKey());
      more.add(answer);
      parts.put(Sorted.set(more), diagrams.and(part.getValue(), where));
      parts.put(part.getKey(), diagrams.minus(part.getValue(), where));
    }
    parts.values().removeIf(situations -> situations == Diagrams.NONE);
  }

  private Map<SortedSet<Answer>, Integer> referrals(SymptomSpace symptom) {
    Map<SortedSet<Answer>, Integer> referrals = new HashMap<>();
    List<Symptom.First> first = symptom.symptom().first();
    for (int i = 0; i < first.size(); i++) {
      Answer answer = new Answer.OfReferral(first.get(i).otherwise());
      referrals.merge(Sorted.set(List.of(answer)), symptom.referrals().get(i), diagrams::or);
    }
    return referrals;
  }

  private double weight(SortedSet<Answer> answers) {
    return answers.stream().mapToDouble(this::weight).max().orElse(1);
  }

  private double weight(Answer answer) {
    return Optional.of(answer)
        .filter(Answer.OfFault.class::isInstance)
        .map(fault -> knowledge.faults().get(answer.name()))
        .map(Fault::frequency)
        .map(BigFraction::doubleValue)
        .orElse(1.0);
  }
}
