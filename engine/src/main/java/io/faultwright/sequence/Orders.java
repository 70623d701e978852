package io.faultwright.sequence;

import io.faultwright.sequence.Facts.Split;
import io.faultwright.sequence.Search.Node;
import io.faultwright.sequence.Search.Way;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Finds orders of checks. */
public final class Orders {
  /** More than rounding. */
  private static final double DOUBT = 1e-6;

  private final Moves moves;
  private final Search search;
  private final Map<State, Costed> known = new HashMap<>();

  private Orders(Moves moves, Search search) {
    this.moves = moves;
    this.search = search;
  }

  /** A step with what it costs from there on, times likelihood. */
  private record Costed(Step step, double minutes, double weighted) {}

  /**
   * The cheapest order, or the cheapest found before patience ended. Where checks take space, what
   * no order is below is said without it.
   *
   * @throws TooManySets where there is none within what may be looked into
   */
  public static Order cheapest(Problem problem, Patience patience) {
    Moves moves = new Moves(problem, patience.most());
    Search cheapest = new Search(moves, 0);
    double least = cheapest.run(patience, patience.effort()).least();
    if (problem.space() == 0) {
      return new Orders(moves, cheapest).order(least);
    }
    double likelihood = moves.facts(moves.start()).likelihood();
    Search smaller = new Search(moves, problem.space() * likelihood);
    long rest = Long.MAX_VALUE - moves.effort();
    smaller.run(patience, moves.effort() + Math.min(rest, patience.effort()));
    return new Orders(moves, smaller).order(least);
  }

  /** The order that always asks what tells most for its price; at once, not the cheapest. */
  public static Order quick(Problem problem) {
    return cheapest(problem, Patience.of(0));
  }

  private Order order(double least) {
    State start = moves.start();
    Costed costed = costed(start);
    double likelihood = moves.facts(start).likelihood();
    double total = likelihood == 0 ? 1 : likelihood;
    if (costed.weighted < least * (1 - DOUBT)) {
      throw new IllegalStateException("an order costs less than was proved possible");
    }
    return new Order(
        costed.step,
        costed.minutes / total,
        costed.weighted / total,
        Math.min(least, costed.weighted) / total,
        moves.effort());
  }

  private Costed costed(State state) {
    Costed done = known.get(state);
    if (done == null) {
      OptionalInt check = check(state);
      done = check.isEmpty() ? stop(state) : ask(state, check.getAsInt());
      known.put(state, done);
    }
    return done;
  }

  private static Costed stop(State state) {
    return new Costed(new Step.Stop(state.set()), 0, 0);
  }

  /** The check of the way that is known to be cheapest. */
  private OptionalInt check(State state) {
    Node node = search.node(state);
    if (moves.facts(state).decided()) {
      return OptionalInt.empty();
    }
    double most = node.most();
    for (Way way : node.ways()) {
      if (way.most() <= most * (1 + Order.ROUNDING)) {
        return OptionalInt.of(way.check());
      }
    }
    return search.greedy().choice(state).check();
  }

  private Costed ask(State state, int check) {
    Facts facts = moves.facts(state);
    Split split = facts.splits().stream().filter(s -> s.check() == check).findFirst().orElseThrow();
    double minutes = moves.minutes(state, check) * facts.likelihood();
    double weighted = moves.price(state, check) * facts.likelihood();
    List<Step> next = new ArrayList<>();
    for (int part : split.parts()) {
      Costed then = costed(moves.after(state, check, part));
      next.add(then.step);
      minutes += then.minutes;
      weighted += then.weighted;
    }
    return new Costed(new Step.Ask(state.set(), check, next, weighted), minutes, weighted);
  }
}
