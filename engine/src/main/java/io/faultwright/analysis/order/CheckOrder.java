package io.faultwright.analysis.order;

import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.sequence.Check;
import io.faultwright.sequence.Order;
import io.faultwright.sequence.Orders;
import io.faultwright.sequence.Patience;
import io.faultwright.sequence.Problem;
import io.faultwright.sequence.Step;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Puts the questions of a symptom in the order that costs least, for some of its situations. Where
 * decisions that stand already are right as well and cost no more than the space they save, they
 * are referred to.
 */
public final class CheckOrder {
  /**
   * What each check that is drawn counts for, in weighted minutes, however seldom it is met: one
   * has to find one's way past it. A choice of ours, without a source.
   */
  private static final double SPACE = 0.1;

  private final Diagrams diagrams;
  private final List<Result> results;
  private final List<Question> questions;
  private final SymptomSituations situations;
  private final Problem problem;
  private final double likelihood;
  private final Decisions decisions = new Decisions();
  private final Following following;
  private final Map<Step, Integer> early = new IdentityHashMap<>();
  private final Map<Step, Integer> late = new IdentityHashMap<>();
  private final Order order;
  private final int root;
  private final Spent spent;

  /**
   * @param questions that may be asked; they tell all results apart
   * @param all the situations in question, at least one
   */
  public CheckOrder(
      SymptomSpace symptom,
      List<Result> results,
      List<Question> questions,
      int all,
      Patience patience) {
    this.diagrams = symptom.space().diagrams();
    this.results = results;
    this.questions = questions;
    this.situations = new SymptomSituations(symptom, results, questions, all);
    Prices prices = new Prices(symptom, questions);
    this.problem = new Problem(situations, prices.outlays(), prices.checks(), SPACE);
    double likely = situations.likelihood(all);
    this.likelihood = likely == 0 ? 1 : likely;
    this.following = new Following(diagrams, decisions, questions, problem, prices.hazardous());
    this.order = Orders.cheapest(problem, patience);
    this.root = decision(order.first(), Way.START);
    this.spent = following.spent(root, all, Way.START).orElseThrow();
  }

  /** What it costs from the first check to the result. */
  public OrderCost cost() {
    double weighted = spent.weighted() / likelihood;
    return new OrderCost(
        spent.minutes() / likelihood, weighted, Math.min(order.atLeast(), weighted));
  }

  public Decisions decisions() {
    return decisions;
  }

  /** Number of the decision on top. */
  public int root() {
    return root;
  }

  /** What may follow is another thing after a late check. */
  private Map<Step, Integer> numbers(Way way) {
    return way.late() ? late : early;
  }

  private int decision(Step step, Way way) {
    Integer known = numbers(way).get(step);
    if (known == null) {
      known =
          step instanceof Step.Ask ask
              ? standing(ask, way).orElseGet(() -> asked(ask, way))
              : decisions.told(result(step.set()));
      numbers(way).put(step, known);
    }
    return known;
  }

  private Result result(int set) {
    return results.stream()
        .filter(result -> diagrams.within(set, result.situations()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("nothing left to ask"));
  }

  /** The cheapest decision that stands already and is worth its detour. */
  private Optional<Integer> standing(Step.Ask ask, Way way) {
    double most = ask.weighted() + SPACE * likelihood * undrawn(ask, way);
    Optional<Integer> best = Optional.empty();
    for (int number = 0; number < decisions.count(); number++) {
      if (decisions.get(number) instanceof Decisions.Asked) {
        Optional<Spent> spent = following.spent(number, ask.set(), way);
        if (spent.isPresent() && spent.get().weighted() < most) {
          most = spent.get().weighted();
          best = Optional.of(number);
        }
      }
    }
    return best;
  }

  /** How many checks would have to be drawn for a step. */
  private long undrawn(Step step, Way way) {
    Set<Step> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    collect(step, way, seen);
    return seen.size();
  }

  private void collect(Step step, Way way, Set<Step> seen) {
    if (step instanceof Step.Ask ask && !numbers(way).containsKey(step) && seen.add(step)) {
      ask.next().forEach(next -> collect(next, way, seen));
    }
  }

  private int asked(Step.Ask ask, Way way) {
    Check check = problem.checks().get(ask.check());
    Way then = way.after(ask.check(), check, situations.first(ask.set()).get(ask.check()));
    IntStream.range(0, ask.next().size())
        .boxed()
        .sorted(Comparator.comparing(i -> -undrawn(ask.next().get(i), then)))
        .forEach(i -> decision(ask.next().get(i), then));
    Question question = questions.get(ask.check());
    List<Arm> arms = new ArrayList<>();
    int position = 0;
    for (int option = 0; option < question.options().size(); option++) {
      if (situations.part(ask.set(), question, option) != Diagrams.NONE) {
        add(arms, option, decision(ask.next().get(position++), then));
      }
    }
    return decisions.asked(question, arms.size() == 1 && isAwaited(ask) ? apart(arms) : arms);
  }

  /** Whether a check has to be made though it tells nothing: it comes first, or others wait. */
  private boolean isAwaited(Step.Ask ask) {
    return situations.first(ask.set()).get(ask.check())
        || problem.checks().stream().anyMatch(check -> check.after().get(ask.check()));
  }

  /** The first answer of an arm by itself, and the others. */
  private static List<Arm> apart(List<Arm> arms) {
    Arm all = arms.get(0);
    BitSet first = new BitSet();
    first.set(all.options().nextSetBit(0));
    BitSet others = (BitSet) all.options().clone();
    others.andNot(first);
    return List.of(new Arm(first, all.next()), new Arm(others, all.next()));
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
