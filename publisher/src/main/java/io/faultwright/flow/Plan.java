package io.faultwright.flow;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.Decisions.Arm;
import io.faultwright.flow.Decisions.Asked;
import io.faultwright.flow.Decisions.Told;
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
    Optional<Integer> fitting = fitting(question, situations);
    if (fitting.isPresent()) {
      return fitting.get();
    }
    List<Arm> arms = new ArrayList<>();
    for (int option = 0; option < question.options().size(); option++) {
      BitSet one = new BitSet();
      one.set(option);
      int part = order.part(situations, question, one);
      if (part != Diagrams.NONE) {
        add(arms, option, decide(part));
      }
    }
    return decisions.asked(question, arms);
  }

  /** A decision made for other situations that asks the same and is right here as well. */
  private Optional<Integer> fitting(Question question, int situations) {
    for (int number = 0; number < decisions.count(); number++) {
      if (decisions.get(number) instanceof Asked asked
          && asked.question().equals(question)
          && fits(number, situations)) {
        return Optional.of(number);
      }
    }
    return Optional.empty();
  }

  /** Whether following a decision in these situations always ends at the right result. */
  private boolean fits(int number, int situations) {
    return decisions.get(number) instanceof Asked asked
        ? fits(asked, situations)
        : diagrams.within(situations, ((Told) decisions.get(number)).result().situations());
  }

  private boolean fits(Asked asked, int situations) {
    int unanswered = situations;
    for (Arm arm : asked.arms()) {
      int part = order.part(situations, asked.question(), arm.options());
      unanswered = diagrams.minus(unanswered, part);
      if (part != Diagrams.NONE && !fits(arm.next(), part)) {
        return false;
      }
    }
    return unanswered == Diagrams.NONE;
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
