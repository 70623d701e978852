package io.faultwright.sequence;

import io.faultwright.sequence.Facts.Split;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for the cheapest order between two bounds. Every state has a cost that no order is below
 * and one that some order reaches; time and again the way is followed on which the cheapest order
 * may lie and on which least is known, and the bounds on it are drawn closer. From memory: Nilsson,
 * "Principles of Artificial Intelligence", 1980 (AO*); McMahan, Likhachev and Gordon, "Bounded
 * real-time dynamic programming", ICML 2005.
 */
final class Search {
  private final Moves moves;
  private final double space;
  private final Bound bound;
  private final Greedy greedy;
  private final Map<State, Node> nodes = new HashMap<>();

  /**
   * @param space what every check in the order counts for, times the likelihood of everything
   */
  Search(Moves moves, double space) {
    this.moves = moves;
    this.space = space;
    this.bound = new Bound(moves, space);
    this.greedy = new Greedy(moves, space);
  }

  /** A state between its bounds. */
  final class Node {
    final State state;
    private double least;
    private double most = Double.NaN;
    private List<Way> ways = List.of();
    private boolean open = true;

    Node(State state) {
      this.state = state;
      this.least = bound.of(state);
      if (moves.facts(state).decided() || least == Double.POSITIVE_INFINITY) {
        most = least;
        open = false;
      }
    }

    double least() {
      return least;
    }

    double most() {
      if (Double.isNaN(most)) {
        most = greedy.choice(state).cost();
        settle();
      }
      return most;
    }

    /** Whether nothing but rounding lies between the bounds, which then meet. */
    boolean isSettled() {
      boolean settled = !(most() - least > 4 * Order.ROUNDING * most);
      least = settled ? most : least;
      return settled;
    }

    private void settle() {
      if (most < Double.POSITIVE_INFINITY && least > most) {
        least = most;
      }
    }

    void open() {
      if (open) {
        open = false;
        ways = new ArrayList<>();
        for (Split split : moves.allowed(state)) {
          ways.add(way(state, split));
        }
        if (ways.isEmpty()) {
          least = Double.POSITIVE_INFINITY;
          most = least;
        }
      }
    }

    List<Way> ways() {
      return ways;
    }

    /** The way on which the cheapest order may lie; of equal ones the first. */
    Way promising() {
      Way best = ways.get(0);
      for (Way way : ways) {
        best = way.least() < best.least() ? way : best;
      }
      return best;
    }

    /** Draws the bounds closer to what is known of the ways; drops ways that cannot be cheapest. */
    void update() {
      if (ways.isEmpty()) {
        return;
      }
      double low = Double.POSITIVE_INFINITY;
      for (Way way : ways) {
        low = Math.min(low, way.least());
      }
      double high = Math.min(most(), promising().most());
      most = high;
      least = Math.max(least, Math.min(low, high));
      ways.removeIf(way -> way.least() > high * (1 + Order.ROUNDING));
    }
  }

  /**
   * A check with what it leads to.
   *
   * @param price of the check, times likelihood, and its space
   */
  record Way(int check, double price, List<Node> next) {
    double least() {
      double sum = price;
      for (Node node : next) {
        sum += node.least();
      }
      return sum;
    }

    double most() {
      double sum = price;
      for (Node node : next) {
        sum += node.most();
      }
      return sum;
    }
  }

  private Way way(State state, Split split) {
    double price = moves.price(state, split.check()) * moves.facts(state).likelihood() + space;
    List<Node> next = new ArrayList<>();
    for (int part : split.parts()) {
      next.add(node(moves.after(state, split.check(), part)));
    }
    return new Way(split.check(), price, next);
  }

  Node node(State state) {
    Node node = nodes.get(state);
    if (node == null) {
      node = new Node(state);
      nodes.put(state, node);
    }
    return node;
  }

  Greedy greedy() {
    return greedy;
  }

  /**
   * The start, with bounds as close as patience allows.
   *
   * @param effort sets looked into, by this search and those before it
   */
  Node run(Patience patience, long effort) {
    Node start = node(moves.start());
    while (!start.isSettled()
        && start.most() - start.least() > patience.gap() * start.most()
        && moves.effort() < effort
        && !patience.over().getAsBoolean()) {
      follow(start);
    }
    return start;
  }

  private void follow(Node start) {
    List<Node> way = new ArrayList<>();
    Node node = start;
    while (!node.isSettled()) {
      node.open();
      way.add(node);
      if (node.ways().isEmpty()) {
        break;
      }
      Node next = node;
      double widest = 0;
      for (Node below : node.promising().next()) {
        double gap = below.isSettled() ? 0 : below.most() - below.least();
        if (gap > widest) {
          widest = gap;
          next = below;
        }
      }
      if (next == node) {
        break;
      }
      node = next;
    }
    for (int i = way.size() - 1; i >= 0; i--) {
      way.get(i).update();
    }
  }
}
