package io.faultwright.sequence;

import java.util.BitSet;

/** Tries every order, plainly: no bounds, nothing remembered, what was paid kept as it is. */
public final class EveryOrder {
  private final Problem problem;
  private final Situations situations;

  public EveryOrder(Problem problem) {
    this.problem = problem;
    this.situations = problem.situations();
  }

  /** The expected cost of the cheapest order, weighted. */
  public double least() {
    int all = situations.all();
    return least(all, new BitSet(), new BitSet(), false) / likelihood(all);
  }

  private double likelihood(int set) {
    return Bits.sum(situations.results(set));
  }

  private double least(int set, BitSet paid, BitSet asked, boolean late) {
    if (situations.results(set).length < 2) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int check = 0; check < problem.checks().size(); check++) {
      if (tells(set, check) && may(set, check, asked, late)) {
        double cost = price(check, paid) * likelihood(set);
        for (int part : situations.parts(set, check)) {
          cost += least(part, with(paid, check), plus(asked, check), late || counts(set, check));
        }
        least = Math.min(least, cost);
      }
    }
    return least;
  }

  /** What an order costs, by walking it; it has to keep to the rules. */
  double along(Step step) {
    int all = situations.all();
    return along(step, new BitSet(), new BitSet(), false) / likelihood(all);
  }

  private double along(Step step, BitSet paid, BitSet asked, boolean late) {
    if (!(step instanceof Step.Ask ask)) {
      if (situations.results(step.set()).length > 1) {
        throw new AssertionError("stopped too early");
      }
      return 0;
    }
    if (!may(ask.set(), ask.check(), asked, late)) {
      throw new AssertionError("not allowed");
    }
    double cost = price(ask.check(), paid) * likelihood(ask.set());
    for (Step next : ask.next()) {
      cost +=
          along(
              next,
              with(paid, ask.check()),
              plus(asked, ask.check()),
              late || counts(ask.set(), ask.check()));
    }
    return cost;
  }

  private boolean tells(int set, int check) {
    return situations.parts(set, check).length > 1;
  }

  /** What has to come first does not count as late. */
  private boolean counts(int set, int check) {
    return lateness(check) && !situations.first(set).get(check);
  }

  private boolean lateness(int check) {
    return problem.checks().get(check).late();
  }

  private boolean may(int set, int check, BitSet asked, boolean late) {
    if (!situations.first(set).isEmpty()) {
      return situations.first(set).get(check);
    }
    boolean ready =
        problem.checks().get(check).after().stream()
            .allMatch(earlier -> asked.get(earlier) || !tells(set, earlier));
    return ready && (lateness(check) || !late);
  }

  private double price(int check, BitSet paid) {
    return problem.checks().get(check).outlays().stream()
        .filter(outlay -> !paid.get(outlay))
        .mapToDouble(outlay -> problem.outlays().get(outlay).weighted())
        .sum();
  }

  private BitSet with(BitSet paid, int check) {
    BitSet more = (BitSet) paid.clone();
    more.or(problem.checks().get(check).outlays());
    return more;
  }

  private static BitSet plus(BitSet asked, int check) {
    BitSet more = (BitSet) asked.clone();
    more.set(check);
    return more;
  }
}
