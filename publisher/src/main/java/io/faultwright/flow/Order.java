package io.faultwright.flow;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Chooses what to ask next: what must be right first, in the written order; then what is easiest to
 * reach, and of that what tells most.
 */
final class Order {
  private final Space space;
  private final Diagrams diagrams;
  private final List<Question> questions;
  private final List<Precondition> preconditions;
  private final Separation separation;
  private final double relevance;

  /**
   * An order of questions.
   *
   * @param relevance a question comes early only if it tells at least this part of what the most
   *     telling one does, 0 to 1
   */
  Order(SymptomSpace symptom, List<Question> questions, double relevance) {
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.questions = questions;
    this.separation = new Separation(space);
    this.relevance = relevance;
    this.preconditions = preconditions(symptom);
  }

  /**
   * Something that must be right before the symptom is worked.
   *
   * @param failing the possible situations in which it is wrong
   * @param subjects what it asks about
   */
  private record Precondition(int failing, Set<String> subjects) {}

  /** A question with the parts into which it divides the situations. */
  private record Candidate(Question question, List<Integer> parts, double gain) {
    static final Comparator<Candidate> EASIEST =
        Comparator.comparing((Candidate candidate) -> candidate.question.access())
            .thenComparing(candidate -> -Math.round(candidate.gain / Separation.NOTHING))
            .thenComparing(Candidate::question, Question.QUICKEST);
  }

  private static List<Precondition> preconditions(SymptomSpace symptom) {
    List<Precondition> preconditions = new ArrayList<>();
    List<Symptom.First> firsts = symptom.symptom().first();
    for (int i = 0; i < firsts.size(); i++) {
      Set<String> subjects =
          Questions.tests(firsts.get(i).when())
              .map(test -> test.subject())
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
        .or(() -> best(situations, questions, results, relevance))
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
    return best(situations, about, sides, 0);
  }

  private Optional<Question> best(
      int situations, List<Question> about, List<Result> results, double least) {
    List<Candidate> candidates =
        about.stream()
            .map(question -> candidate(situations, question, results))
            .filter(candidate -> candidate.parts.size() > 1)
            .toList();
    double most = candidates.stream().mapToDouble(Candidate::gain).max().orElse(0);
    double enough = Math.min(Math.max(most * least, Separation.NOTHING), most);
    return candidates.stream()
        .filter(candidate -> candidate.gain >= enough)
        .min(Candidate.EASIEST)
        .map(Candidate::question);
  }

  private Candidate candidate(int situations, Question question, List<Result> results) {
    List<Integer> parts =
        question.options().stream()
            .map(option -> part(situations, question, option))
            .filter(part -> part != Diagrams.NONE)
            .toList();
    return new Candidate(question, parts, separation.gain(situations, parts, results));
  }

  /** The situations that give an answer. */
  int part(int situations, Question question, java.util.BitSet option) {
    return diagrams.and(situations, diagrams.literal(question.axis(), option));
  }
}
