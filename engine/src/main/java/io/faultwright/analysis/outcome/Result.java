package io.faultwright.analysis.outcome;

import io.faultwright.model.Answer;
import java.util.Comparator;
import java.util.SortedSet;

/**
 * What a technician is told at the end of a path.
 *
 * @param answers the answers; none where the rules say nothing
 * @param situations the possible situations in which that is told, as a diagram
 * @param weight how often it is met, relative to the others
 */
public record Result(SortedSet<Answer> answers, int situations, double weight) {
  /** By what is told. */
  public static final Comparator<Result> ORDER =
      Comparator.comparing(result -> result.answers().toString());
}
