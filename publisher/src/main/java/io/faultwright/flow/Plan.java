package io.faultwright.flow;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.Decisions.Arm;
import io.faultwright.flow.Decisions.Asked;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The decisions of a chart, found from the top: the situations that are left are divided by one
 * question after another until only one result is possible. Answers that cannot occur are left out.
 */
final class Plan {
  /** With more distinct sets of situations than this a printed chart is of no use to anyone. */
  private static final int MOST_STATES = 4_000;

  private final Diagrams diagrams;
  private final List<Result> results;
  private final Order order;
  private final Decisions decisions = new Decisions();
  private final Map<Integer, Integer> known = new HashMap<>();
  private final int root;

  private Plan(SymptomSpace symptom, List<Result> results, Order order) {
    this.diagrams = symptom.space().diagrams();
    this.results = results;
    this.order = order;
    this.root = decide(symptom.possible());
  }

  /** The plan of a symptom with something possible; empty where it would grow beyond use. */
  static Optional<Plan> of(SymptomSpace symptom, List<Result> results, Order order) {
    try {
      return Optional.of(new Plan(symptom, results, order));
    } catch (TooLarge tooLarge) {
      return Optional.empty();
    }
  }

  private static final class TooLarge extends RuntimeException {
    private TooLarge() {
      super("too many states", null, false, false);
    }
  }

  /** Number of the decision on top. */
  int root() {
    return root;
  }

  Decisions decisions() {
    return decisions;
  }

  /** How many symbols the chart needs when checks are shared and results repeated. */
  int size() {
    Set<Integer> checks = new TreeSet<>();
    return size(root, checks);
  }

  private int size(int number, Set<Integer> seen) {
    if (!(decisions.get(number) instanceof Asked asked)) {
      return 1;
    }
    return seen.add(number)
        ? 1 + asked.arms().stream().mapToInt(arm -> size(arm.next(), seen)).sum()
        : 1;
  }

  private int decide(int situations) {
    Integer done = known.get(situations);
    if (done != null) {
      return done;
    }
    if (known.size() >= MOST_STATES) {
      throw new TooLarge();
    }
    List<Result> left =
        results.stream()
            .filter(result -> diagrams.and(situations, result.situations()) != Diagrams.NONE)
            .toList();
    int decision = left.size() == 1 ? decisions.told(left.get(0)) : ask(situations, left);
    known.put(situations, decision);
    return decision;
  }

  private int ask(int situations, List<Result> left) {
    Question question = order.next(situations, left);
    List<Arm> arms = new ArrayList<>();
    for (int option = 0; option < question.options().size(); option++) {
      int part = order.part(situations, question, question.options().get(option));
      if (part != Diagrams.NONE) {
        add(arms, option, decide(part));
      }
    }
    return decisions.asked(question, arms);
  }

  private static void add(List<Arm> arms, int option, int next) {
    for (Arm arm : arms) {
      if (arm.next() == next) {
        arm.options().set(option);
        return;
      }
    }
    BitSet options = new BitSet();
    options.set(option);
    arms.add(new Arm(options, next));
  }
}
