package io.faultwright.analysis.chart;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** What a technician is told in each possible situation, by the rules and by what comes first. */
final class RuleOutcomes {
  private static final int MOST = 32;

  private final Diagrams diagrams;
  private final SortedMap<Answer, Integer> told;

  RuleOutcomes(SymptomSpace symptom) {
    this.diagrams = symptom.space().diagrams();
    this.told = new TreeMap<>(symptom.answers());
    List<Symptom.First> first = symptom.symptom().first();
    for (int i = 0; i < first.size(); i++) {
      Answer referral = new Answer.OfReferral(first.get(i).otherwise());
      told.merge(referral, symptom.referrals().get(i), diagrams::or);
    }
  }

  /**
   * Some situations with the same outcome.
   *
   * @param answers what is told; none where the rules say nothing
   * @param situations where
   */
  record Part(SortedSet<Answer> answers, int situations) {
    static final Comparator<Part> ORDER = Comparator.comparing(part -> part.answers().toString());
  }

  /** The situations in which exactly these answers are given, whether possible or not. */
  int exactly(SortedSet<Answer> answers) {
    int where = Diagrams.ALL;
    for (Answer answer : answers) {
      where = diagrams.and(where, told.getOrDefault(answer, Diagrams.NONE));
    }
    for (Answer other : told.keySet()) {
      if (!answers.contains(other)) {
        where = diagrams.minus(where, told.get(other));
      }
    }
    return where;
  }

  /**
   * Possible situations divided by what is told in them, in a fixed order; empty where there are
   * more parts than anybody reads, as where rules contradict each other everywhere.
   */
  Optional<List<Part>> divided(int situations) {
    List<Part> parts = List.of(new Part(new TreeSet<>(), situations));
    for (Answer answer : told.keySet()) {
      List<Part> finer = new ArrayList<>();
      parts.forEach(part -> divide(part, answer, finer));
      parts = finer;
      if (parts.size() > MOST) {
        return Optional.empty();
      }
    }
    return Optional.of(parts.stream().sorted(Part.ORDER).toList());
  }

  private void divide(Part part, Answer answer, List<Part> finer) {
    int without = diagrams.minus(part.situations(), told.get(answer));
    int with = diagrams.and(part.situations(), told.get(answer));
    if (without != Diagrams.NONE) {
      finer.add(new Part(part.answers(), without));
    }
    if (with != Diagrams.NONE) {
      SortedSet<Answer> more = new TreeSet<>(part.answers());
      more.add(answer);
      finer.add(new Part(Sorted.set(more), with));
    }
  }
}
