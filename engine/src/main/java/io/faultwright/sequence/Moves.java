package io.faultwright.sequence;

import io.faultwright.sequence.Facts.Split;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What may be asked where, what it costs there, and where it leads. */
final class Moves {
  private final Problem problem;
  private final long most;
  private final Map<Integer, Facts> facts = new HashMap<>();

  /**
   * @param most sets that may be looked into
   */
  Moves(Problem problem, long most) {
    this.problem = problem;
    this.most = most;
  }

  State start() {
    return state(problem.situations().all(), new BitSet(), false);
  }

  Facts facts(State state) {
    return facts(state.set());
  }

  private Facts facts(int set) {
    Facts known = facts.get(set);
    if (known == null) {
      if (facts.size() >= most) {
        throw new TooManySets();
      }
      known = Facts.of(problem, set);
      facts.put(set, known);
    }
    return known;
  }

  /** How many sets were looked into. */
  long effort() {
    return facts.size();
  }

  Check check(int position) {
    return problem.checks().get(position);
  }

  Outlay outlay(int position) {
    return problem.outlays().get(position);
  }

  /**
   * The checks that tell something and may be made; none where one has come to a dead end. What was
   * asked tells nothing more, so that a check waits only for those that still do.
   */
  List<Split> allowed(State state) {
    Facts here = facts(state);
    BitSet first = problem.situations().first(state.set());
    if (!first.isEmpty()) {
      return here.splits().stream().filter(split -> first.get(split.check())).toList();
    }
    BitSet open = here.checks();
    return here.splits().stream()
        .filter(split -> !check(split.check()).after().intersects(open))
        .filter(split -> check(split.check()).late() || !state.late())
        .toList();
  }

  /** What a check costs here, weighted. */
  double price(State state, int check) {
    return price(state, check, Outlay::weighted);
  }

  /** How many minutes a check takes here. */
  double minutes(State state, int check) {
    return price(state, check, Outlay::minutes);
  }

  private double price(State state, int check, ToDoubleFunction<Outlay> of) {
    double price = 0;
    BitSet outlays = check(check).outlays();
    for (int i = outlays.nextSetBit(0); i >= 0; i = outlays.nextSetBit(i + 1)) {
      price += state.paid().get(i) ? 0 : of.applyAsDouble(outlay(i));
    }
    return price;
  }

  /** After a check whose answer leaves a part. */
  State after(State state, int check, int part) {
    BitSet paid = (BitSet) state.paid().clone();
    paid.or(check(check).outlays());
    boolean first = problem.situations().first(state.set()).get(check);
    return state(part, paid, state.late() || check(check).late() && !first);
  }

  private State state(int set, BitSet paid, boolean late) {
    BitSet outlays = new BitSet();
    boolean early = false;
    for (Split split : facts(set).splits()) {
      outlays.or(check(split.check()).outlays());
      early |= !check(split.check()).late();
    }
    paid.and(outlays);
    return new State(set, paid, late && early);
  }
}
