package io.faultwright.analysis.ambiguity;

import io.faultwright.analysis.space.Diagrams;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The easiest readings that always tell two sets of situations apart; exact.
 *
 * <p>Wherever some readings do not, a largest set of axes is found on which situations of both
 * agree; then the readings have to bring knowledge of one of the other axes. The easiest readings
 * that meet all such demands found so far are tried next, until they do. From memory: Reiter, "A
 * theory of diagnosis from first principles", Artificial Intelligence 32, 1987 (hitting sets);
 * Moreno-Centeno and Karp, "The implicit hitting set approach", Operations Research 61(2), 2013.
 */
final class CheapestReadings {
  private final Diagrams diagrams;
  private final Takings takings;
  private final Comparator<SortedSet<String>> easier;

  CheapestReadings(Diagrams diagrams, Takings takings) {
    this.diagrams = diagrams;
    this.takings = takings;
    this.easier =
        Comparator.comparing((SortedSet<String> taken) -> takings.effort(taken))
            .thenComparing(Set::size);
  }

  /** The readings, none where the machine tells; absent where a situation is in both sets. */
  Optional<SortedSet<String>> between(int one, int other) {
    if (diagrams.and(one, other) != Diagrams.NONE) {
      return Optional.empty();
    }
    List<BitSet> demands = new ArrayList<>();
    SortedSet<String> taken = new TreeSet<>();
    while (agree(one, other, takings.known(taken))) {
      demands.add(demand(one, other, takings.known(taken)));
      taken = new Search(demands).best();
    }
    return Optional.of(taken);
  }

  /** Whether a situation of each lies in the same cells of some axes. */
  boolean agree(int one, int other, BitSet axes) {
    return diagrams.and(diagrams.keep(one, axes), diagrams.keep(other, axes)) != Diagrams.NONE;
  }

  /** Axes of which one at least has to become known besides those that are. */
  private BitSet demand(int one, int other, BitSet known) {
    BitSet agreeing = (BitSet) known.clone();
    BitSet demand = new BitSet();
    for (int axis = 0; axis < diagrams.axes(); axis++) {
      if (!agreeing.get(axis)) {
        agreeing.set(axis);
        if (!agree(one, other, agreeing)) {
          agreeing.clear(axis);
          demand.set(axis);
        }
      }
    }
    return demand;
  }

  /** Looks for the easiest readings that meet all demands, by branch and bound. */
  private final class Search {
    private final List<BitSet> demands;
    private final Set<SortedSet<String>> tried = new HashSet<>();
    private Optional<SortedSet<String>> best = Optional.empty();

    Search(List<BitSet> demands) {
      this.demands = demands;
    }

    SortedSet<String> best() {
      extend(new TreeSet<>());
      return best.orElseThrow();
    }

    private void extend(SortedSet<String> taken) {
      if (!tried.add(taken) || best.filter(known -> easier.compare(taken, known) > 0).isPresent()) {
        return;
      }
      BitSet known = takings.known(taken);
      Optional<BitSet> open =
          demands.stream()
              .filter(demand -> !demand.intersects(known))
              .min(Comparator.comparing(BitSet::cardinality));
      if (open.isEmpty()) {
        offer(taken);
      } else {
        open.get().stream().forEach(axis -> extend(with(taken, takings.needs(axis))));
      }
    }

    private void offer(SortedSet<String> taken) {
      boolean better =
          best.filter(
                  known ->
                      easier
                              .thenComparing(readings -> String.join(" ", readings))
                              .compare(taken, known)
                          >= 0)
              .isEmpty();
      if (better) {
        best = Optional.of(taken);
      }
    }

    private static SortedSet<String> with(SortedSet<String> taken, SortedSet<String> more) {
      SortedSet<String> all = new TreeSet<>(taken);
      all.addAll(more);
      return all;
    }
  }
}
