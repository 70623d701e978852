package io.faultwright.sequence;

import io.faultwright.sequence.Facts.Split;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * A good order at once: each time what tells most for its price. After Pattipati and Alexandridis,
 * "Application of heuristic search and information theory to sequential fault diagnosis", IEEE
 * Trans. Systems, Man, and Cybernetics 20(4), 1990; from memory. Where that ends in a dead end,
 * since nothing early may follow what is late, early checks are made first.
 */
final class Greedy {
  private final Moves moves;
  private final double space;
  private final Map<State, Choice> known = new HashMap<>();

  /**
   * @param space what every check in the order counts for
   */
  Greedy(Moves moves, double space) {
    this.moves = moves;
    this.space = space;
  }

  /**
   * What is done in a state.
   *
   * @param cost from here on, times likelihood; infinite in a dead end
   * @param check what is asked; absent where nothing is
   */
  record Choice(double cost, OptionalInt check) {
    private static final Choice STOP = new Choice(0, OptionalInt.empty());
    private static final Choice DEAD_END =
        new Choice(Double.POSITIVE_INFINITY, OptionalInt.empty());
  }

  Choice choice(State state) {
    Choice choice = known.get(state);
    if (choice == null) {
      choice = moves.facts(state).decided() ? Choice.STOP : choose(state);
      known.put(state, choice);
    }
    return choice;
  }

  private Choice choose(State state) {
    List<Split> telling =
        moves.allowed(state).stream()
            .sorted(Comparator.comparingDouble(split -> -pace(state, split)))
            .toList();
    Choice best = telling.isEmpty() ? Choice.DEAD_END : follow(state, telling.get(0));
    if (best.cost() < Double.POSITIVE_INFINITY) {
      return best;
    }
    return telling.stream()
        .filter(split -> !moves.check(split.check()).late())
        .findFirst()
        .map(split -> follow(state, split))
        .orElse(Choice.DEAD_END);
  }

  /** Bits for each weighted minute; what costs nothing and tells something comes first. */
  private double pace(State state, Split split) {
    double price = moves.price(state, split.check());
    return price == 0 ? 1e9 * (1 + split.told()) : split.told() / price;
  }

  private Choice follow(State state, Split split) {
    double cost = moves.price(state, split.check()) * moves.facts(state).likelihood() + space;
    for (int part : split.parts()) {
      cost += choice(moves.after(state, split.check(), part)).cost();
    }
    return new Choice(cost, OptionalInt.of(split.check()));
  }
}
