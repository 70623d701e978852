package io.faultwright.field;

import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import io.faultwright.run.Status;
import io.faultwright.run.Verdict;
import java.util.Comparator;
import java.util.SortedSet;

/**
 * What the rules said, and on which ground.
 *
 * @param symptom id of the symptom
 * @param verdict what they said
 * @param rules ids of the rules that said it; none where no rule was needed, or none answered
 */
public record Ground(String symptom, Verdict verdict, SortedSet<String> rules)
    implements Comparable<Ground> {
  private static final Comparator<Ground> ORDER =
      Comparator.comparing(Ground::symptom)
          .thenComparing(ground -> ground.verdict.status() != Status.ANSWERED)
          .thenComparing(ground -> String.join(" ", ground.rules))
          .thenComparing(ground -> ground.verdict.status())
          .thenComparing(ground -> names(ground.verdict.answers()))
          .thenComparing(ground -> ground.verdict.contradictory());

  public Ground {
    rules = Sorted.set(rules);
  }

  static String names(SortedSet<Answer> answers) {
    StringBuilder names = new StringBuilder();
    answers.forEach(answer -> names.append(answer.rank()).append(answer.name()).append(' '));
    return names.toString();
  }

  @Override
  public int compareTo(Ground other) {
    return ORDER.compare(this, other);
  }
}
