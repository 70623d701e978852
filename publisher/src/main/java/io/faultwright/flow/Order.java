package io.faultwright.flow;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.outcome.Separation;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Condition;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Chooses what to ask next: what must be right first, in the written order; then, among questions
 * that tell something, what is easiest to reach or what keeps the chart small.
 */
final class Order {
  private final Space space;
  private final Diagrams diagrams;
  private final List<Question> questions;
  private final List<Precondition> preconditions;
  private final Separation separation;
  private final Priority priority;

  Order(SymptomSpace symptom, List<Question> questions, Priority priority) {
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.questions = questions;
    this.separation = new Separation(space);
    this.priority = priority;
    this.preconditions = preconditions(symptom);
  }

  /** What makes one question better than another. */
  enum Priority {
    /** What can be seen from outside comes before anything that has to be opened. */
    ACCESS(Comparator.comparing(Candidate::access).thenComparing(Candidate::spread)),
    /** Questions that leave each result in one place come before those that scatter results. */
    COMPACTNESS(Comparator.comparing(Candidate::spread).thenComparing(Candidate::access));

    private final Comparator<Candidate> order;

    Priority(Comparator<Candidate> order) {
      this.order =
          order
              .thenComparing(candidate -> candidate.question.takingOnly())
              .thenComparing(Candidate::gain)
              .thenComparing(Candidate::question, Question.QUICKEST);
    }
  }

  /**
   * Something that must be right before the symptom is worked.
   *
   * @param failing the possible situations in which it is wrong
   * @param subjects what it asks about
   */
  private record Precondition(int failing, Set<String> subjects) {}

  /**
   * A question as it looks in some situations.
   *
   * @param question what would be asked
   * @param spread how often a result would stand below one of the answers, over all answers
   * @param gain what it tells, as a whole number that falls
   */
  private record Candidate(Question question, long spread, long gain) {
    int access() {
      return question.access().ordinal();
    }
  }

  private static List<Precondition> preconditions(SymptomSpace symptom) {
    List<Precondition> preconditions = new ArrayList<>();
    List<Symptom.First> firsts = symptom.symptom().first();
    for (int i = 0; i < firsts.size(); i++) {
      Set<String> subjects =
          Questions.tests(firsts.get(i).when())
              .map(Condition.Test::subject)
              .collect(Collectors.toSet());
      preconditions.add(new Precondition(symptom.referrals().get(i), subjects));
    }
    return preconditions;
  }

  /** What to ask in these situations, which lead to more than one result. */
  Question next(int situations, List<Result> results) {
    return preconditions.stream()
        .map(precondition -> onPrecondition(situations, precondition))
        .flatMap(Optional::stream)
        .findFirst()
        .or(() -> best(situations, questions, results))
        .orElseThrow(() -> new IllegalStateException("nothing left to ask"));
  }

  private Optional<Question> onPrecondition(int situations, Precondition precondition) {
    int failing = diagrams.and(situations, precondition.failing);
    int right = diagrams.minus(situations, failing);
    if (failing == Diagrams.NONE || right == Diagrams.NONE) {
      return Optional.empty();
    }
    List<Question> about =
        questions.stream().filter(q -> precondition.subjects.contains(q.subject())).toList();
    List<Result> sides =
        List.of(new Result(Results.NOTHING, failing, 1), new Result(Results.NOTHING, right, 1));
    return best(situations, about, sides);
  }

  /** The best question that has more than one answer here, preferably one that tells something. */
  private Optional<Question> best(int situations, List<Question> about, List<Result> results) {
    return about.stream()
        .map(question -> candidate(situations, question, results))
        .flatMap(Optional::stream)
        .min(
            Comparator.comparing((Candidate candidate) -> candidate.gain == 0)
                .thenComparing(priority.order))
        .map(Candidate::question);
  }

  private Optional<Candidate> candidate(int situations, Question question, List<Result> results) {
    List<Integer> parts =
        question.options().stream()
            .map(option -> diagrams.literal(question.axis(), option))
            .map(answer -> diagrams.and(situations, answer))
            .filter(part -> part != Diagrams.NONE)
            .toList();
    double gain = separation.gain(situations, parts, results);
    long falling = -Math.round(gain / Separation.NOTHING);
    return parts.size() < 2
        ? Optional.empty()
        : Optional.of(new Candidate(question, spread(parts, results), falling));
  }

  private long spread(List<Integer> parts, List<Result> results) {
    return parts.stream()
        .mapToLong(
            part ->
                results.stream()
                    .filter(result -> diagrams.and(part, result.situations()) != Diagrams.NONE)
                    .count())
        .sum();
  }

  /** The situations that give one of some answers. */
  int part(int situations, Question question, BitSet options) {
    return diagrams.and(situations, diagrams.literal(question.axis(), question.cells(options)));
  }
}
