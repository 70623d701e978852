package io.faultwright.analysis.order;

import io.faultwright.analysis.outcome.Result;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Checks and results of a chart, equal ones only once; each is known by its number. */
public final class Decisions {
  private final List<Decision> all = new ArrayList<>();
  private final Map<Decision, Integer> numbers = new HashMap<>();

  /** A check or a result. */
  public sealed interface Decision {}

  /** The end of a path. */
  public record Told(Result result) implements Decision {}

  /**
   * A question with what follows from its answers.
   *
   * @param question what is asked
   * @param arms in the order of the answers; at least two
   */
  public record Asked(Question question, List<Arm> arms) implements Decision {
    public Asked {
      arms = List.copyOf(arms);
    }
  }

  /**
   * Answers that lead on to one decision.
   *
   * @param options which of the question's options
   * @param next number of the decision
   */
  public record Arm(BitSet options, int next) {}

  int told(Result result) {
    return intern(new Told(result));
  }

  /** A question, or what follows anyway if all its answers lead to the same. */
  int asked(Question question, List<Arm> arms) {
    return arms.size() == 1 ? arms.get(0).next() : intern(new Asked(question, arms));
  }

  public int count() {
    return all.size();
  }

  public Decision get(int number) {
    return all.get(number);
  }

  private int intern(Decision decision) {
    return numbers.computeIfAbsent(
        decision,
        fresh -> {
          all.add(fresh);
          return all.size() - 1;
        });
  }
}
