package io.faultwright.sequence;

import io.faultwright.sequence.Facts.Split;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * What it costs at least, on average, to come from a state to one result; proved, seldom reached.
 *
 * <p>The answers on the way have to bring the bits of the results. A check is made at most once on
 * a way; made with some likelihood it brings no more bits than that times the logarithm of its
 * answers, and over all ways no more than the bits of its answers here. The cheapest mixture of
 * checks within these bounds is a lower bound. An outlay that several checks share is shared out
 * among them. Where every check cost as much as the cheapest, Huffman's code is another bound. A
 * third are the outlays of the checks that certain situations cannot do without.
 */
final class Bound {
  private final Moves moves;
  private final double space;

  /**
   * @param space what every check in the order counts for
   */
  Bound(Moves moves, double space) {
    this.moves = moves;
    this.space = space;
  }

  /** A check as the bound sees it. */
  private record Offer(double price, double most, double perUse) {
    double perBit() {
      return price / perUse;
    }
  }

  /** Cost times likelihood. */
  double of(State state) {
    Facts facts = moves.facts(state);
    if (facts.decided()) {
      return 0;
    }
    List<Split> splits =
        facts.splits().stream()
            .filter(split -> !state.late() || moves.check(split.check()).late())
            .toList();
    if (splits.isEmpty() || state.late() && isMissing(facts)) {
      return Double.POSITIVE_INFINITY;
    }
    Offer[] offers = offers(state, splits);
    double told = Math.max(mixture(facts, offers), code(facts, splits, offers));
    double paid = Math.max(told, needed(state, facts));
    return (paid + space(facts, splits)) * (1 - Order.ROUNDING);
  }

  /** Whether an early check is needed, which can no longer be made. */
  private boolean isMissing(Facts facts) {
    return facts.splits().stream()
        .anyMatch(split -> split.needed() > 0 && !moves.check(split.check()).late());
  }

  /** What is paid where a check is needed; an outlay that several of them share, once. */
  private double needed(State state, Facts facts) {
    double[] likelihoods = new double[64];
    for (Split split : facts.splits()) {
      BitSet outlays = moves.check(split.check()).outlays();
      for (int i = outlays.nextSetBit(0); i >= 0; i = outlays.nextSetBit(i + 1)) {
        likelihoods = i < likelihoods.length ? likelihoods : Arrays.copyOf(likelihoods, 2 * i);
        likelihoods[i] = Math.max(likelihoods[i], state.paid().get(i) ? 0 : split.needed());
      }
    }
    double sum = 0;
    for (int i = 0; i < likelihoods.length; i++) {
      sum += likelihoods[i] == 0 ? 0 : likelihoods[i] * moves.outlay(i).weighted();
    }
    return sum;
  }

  /** A tree with so many ends has a check for every few of them. */
  private double space(Facts facts, List<Split> splits) {
    return space == 0 ? 0 : space * Math.ceil((facts.results().length - 1.0) / (most(splits) - 1));
  }

  private static int most(List<Split> splits) {
    return splits.stream().mapToInt(split -> split.parts().length).max().orElse(2);
  }

  private Offer[] offers(State state, List<Split> splits) {
    int[] sharing = new int[64];
    for (Split split : splits) {
      BitSet outlays = moves.check(split.check()).outlays();
      for (int i = outlays.nextSetBit(0); i >= 0; i = outlays.nextSetBit(i + 1)) {
        sharing = i < sharing.length ? sharing : Arrays.copyOf(sharing, 2 * i);
        sharing[i]++;
      }
    }
    int[] shared = sharing;
    return splits.stream().map(split -> offer(state, split, shared)).toArray(Offer[]::new);
  }

  private Offer offer(State state, Split split, int[] sharing) {
    double price = 0;
    BitSet outlays = moves.check(split.check()).outlays();
    for (int i = outlays.nextSetBit(0); i >= 0; i = outlays.nextSetBit(i + 1)) {
      price += state.paid().get(i) ? 0 : moves.outlay(i).weighted() / sharing[i];
    }
    return new Offer(price, split.bits(), Bits.log(split.parts().length));
  }

  private static double mixture(Facts facts, Offer[] offers) {
    Offer[] cheapest = offers.clone();
    Arrays.sort(cheapest, Comparator.comparingDouble(Offer::perBit));
    double missing = facts.bits();
    double cost = 0;
    for (Offer offer : cheapest) {
      double bits = Math.min(missing, offer.most);
      cost += bits * offer.perBit();
      missing -= bits;
    }
    return cost * facts.likelihood();
  }

  private static double code(Facts facts, List<Split> splits, Offer[] offers) {
    double cheapest = Arrays.stream(offers).mapToDouble(Offer::price).min().orElse(0);
    return cheapest == 0 ? 0 : cheapest * Bits.huffman(facts.results(), most(splits));
  }
}
