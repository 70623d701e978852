package io.faultwright.analysis.order;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Separation;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Condition;
import io.faultwright.model.Symptom;
import io.faultwright.sequence.Situations;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The situations of a symptom, as its questions divide them; a set is a diagram. */
final class SymptomSituations implements Situations {
  private final Diagrams diagrams;
  private final List<Result> results;
  private final List<Question> questions;
  private final Separation separation;
  private final int all;
  private final List<Precondition> preconditions = new ArrayList<>();
  private final List<int[]> answers = new ArrayList<>();
  private final List<Integer> needing = new ArrayList<>();
  private final Map<Integer, double[]> likelihoods;

  /**
   * @param all the situations in question
   */
  SymptomSituations(SymptomSpace symptom, List<Result> results, List<Question> questions, int all) {
    this.diagrams = symptom.space().diagrams();
    this.results = results;
    this.questions = questions;
    this.separation = new Separation(symptom.space());
    this.all = all;
    this.likelihoods = new HashMap<>();
    for (Question question : questions) {
      answers.add(answers(question));
      needing.add(needing(question.axis()));
    }
    List<Symptom.First> firsts = symptom.symptom().first();
    for (int i = 0; i < firsts.size(); i++) {
      preconditions.add(
          new Precondition(symptom.referrals().get(i), about(firsts.get(i).when(), questions)));
    }
  }

  private SymptomSituations(SymptomSituations of, int all) {
    this.diagrams = of.diagrams;
    this.results = of.results;
    this.questions = of.questions;
    this.separation = of.separation;
    this.all = all;
    this.likelihoods = of.likelihoods;
    answers.addAll(of.answers);
    preconditions.addAll(of.preconditions);
    questions.forEach(question -> needing.add(needing(question.axis())));
  }

  /** Some of these situations, as all there are. */
  SymptomSituations within(int set) {
    return new SymptomSituations(this, set);
  }

  /**
   * Something that must be right before the symptom is worked.
   *
   * @param failing the possible situations in which it is wrong
   * @param questions what asks about it
   */
  private record Precondition(int failing, BitSet questions) {}

  private static BitSet about(Condition condition, List<Question> questions) {
    Set<String> subjects =
        condition.tests().map(Condition.Test::subject).collect(Collectors.toSet());
    BitSet about = new BitSet();
    for (int i = 0; i < questions.size(); i++) {
      about.set(i, subjects.contains(questions.get(i).subject()));
    }
    return about;
  }

  private int[] answers(Question question) {
    return question.options().stream()
        .mapToInt(option -> diagrams.literal(question.axis(), option))
        .toArray();
  }

  /** Situations that nothing but an axis tells apart from some with another result. */
  private int needing(int axis) {
    BitSet others = new BitSet();
    others.set(0, diagrams.axes());
    others.clear(axis);
    int needing = Diagrams.NONE;
    for (Result result : results) {
      int inside = diagrams.and(all, result.situations());
      int beside = diagrams.keep(diagrams.minus(all, result.situations()), others);
      needing = diagrams.or(needing, diagrams.and(inside, beside));
    }
    return needing;
  }

  @Override
  public double needed(int set, int check) {
    return likelihood(diagrams.and(set, needing.get(check)));
  }

  /** How likely a set is, relative to others. */
  double likelihood(int set) {
    double sum = 0;
    for (double one : results(set)) {
      sum += one;
    }
    return sum;
  }

  @Override
  public int all() {
    return all;
  }

  @Override
  public double[] results(int set) {
    double[] known = likelihoods.get(set);
    if (known == null) {
      known = separation.present(set, results);
      likelihoods.put(set, known);
    }
    return known;
  }

  @Override
  public int[] parts(int set, int check) {
    int[] parts = new int[answers.get(check).length];
    int count = 0;
    for (int answer : answers.get(check)) {
      int part = diagrams.and(set, answer);
      if (part != Diagrams.NONE) {
        parts[count++] = part;
      }
    }
    return Arrays.copyOf(parts, count);
  }

  @Override
  public BitSet first(int set) {
    for (Precondition precondition : preconditions) {
      int failing = diagrams.and(set, precondition.failing);
      if (failing != Diagrams.NONE && failing != set) {
        BitSet dividing = new BitSet();
        precondition.questions.stream()
            .filter(check -> parts(set, check).length > 1)
            .forEach(dividing::set);
        if (!dividing.isEmpty()) {
          return dividing;
        }
      }
    }
    return new BitSet();
  }

  /** The part of a set that gives some answers to a question. */
  int part(int set, Question question, int option) {
    return diagrams.and(set, answers.get(questions.indexOf(question))[option]);
  }
}
