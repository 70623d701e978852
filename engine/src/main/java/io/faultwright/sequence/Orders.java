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
  private final Search search;
  private final Moves moves;
  private final Map<State, Costed> known = new HashMap<>();

  private Orders(Problem problem) {
    this.search = new Search(problem);
    this.moves = search.moves();
  }

  /** A step with what it costs from there on, times likelihood. */
  private record Costed(Step step, double minutes, double weighted) {}

  /** The cheapest order, or the cheapest found before patience ended. */
  public static Order cheapest(Problem problem, Patience patience) {
    Orders orders = new Orders(problem);
    return orders.order(orders.search.run(patience));
  }

  /** The order that always asks what tells most for its price; at once, not the cheapest. */
  public static Order quick(Problem problem) {
    return cheapest(problem, Patience.of(0));
  }

  private Order order(Node start) {
    Costed costed = costed(start.state);
    double likelihood = moves.facts(start.state).likelihood();
    double total = likelihood == 0 ? 1 : likelihood;
    return new Order(
        costed.step,
        costed.minutes / total,
        costed.weighted / total,
        Math.min(start.least(), costed.weighted) / total,
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
    return new Costed(new Step.Ask(state.set(), check, next), minutes, weighted);
  }
}
