package io.faultwright.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Chooses where a chart is broken over pages: the fewest pages, then the fewest connectors, then
 * pages as evenly filled as can be. Starts from parts that grow from the top as long as a page
 * holds them ({@link Growth}), and then moves, takes away and adds cuts, one or two at a time, as
 * long as that is better. Every attempt is judged by the real layout of all pages.
 *
 * <p>The number of attempts is limited, so that a chart of any size is laid out in a short time;
 * the same chart always gets the same breaks.
 */
final class PageBreaks {
  /** Shares of a full page up to which pages are filled with the tops of branches to begin with. */
  private static final List<Double> FILLS = List.of(0.5, 0.7, 0.9);

  /** Most attempts from one beginning, and most after changes at random. */
  private static final int MOST_ATTEMPTS = 2_000;

  private static final int MOST_KICKED = 4_000;

  /** With more places than this there are fewer attempts, as each takes longer. */
  private static final int MANY = 40;

  /** Changes at random that are made at once. */
  private static final int KICKS = 3;

  /** The random numbers are always the same. */
  private static final int SEED = 1;

  /** The larger the parts, the better: a page with little on it can then be done without. */
  private static final Comparator<Broken> EMPTIED =
      Broken.BETTER.thenComparing(Comparator.comparing(Broken::squares).reversed());

  private static final Comparator<Broken> EVEN = Broken.BETTER.thenComparing(Broken::squares);

  private final String start;
  private final List<Tree> trees;
  private final Printer printer;
  private final Cuts cuts;

  /** What came of cuts; the search comes back to the same ones again and again. */
  private final Map<BitSet, Broken> known = new HashMap<>();

  /** For other cuts the number of pages that are too few for them. */
  private final Map<BitSet, Integer> tooFew = new HashMap<>();

  PageBreaks(String start, List<Tree> trees, Printer printer) {
    this.start = start;
    this.trees = trees;
    this.printer = printer;
    this.cuts = new Cuts(trees);
  }

  /**
   * A chart broken over pages.
   *
   * @param cuts where it is cut
   * @param pages the parts of each page
   * @param misfits pages that hold only what cannot be cut and is still too large
   * @param connectors how many lines go on elsewhere
   * @param squares of what fills the pages, summed; least where all are filled alike
   */
  private record Broken(
      BitSet cuts, List<List<Part>> pages, int misfits, int connectors, int squares) {
    static final Comparator<Broken> BETTER =
        Comparator.comparing(Broken::misfits)
            .thenComparing(broken -> broken.pages().size())
            .thenComparing(Broken::connectors);

    static Broken of(BitSet cuts, List<Filling> pages) {
      int misfits = 0;
      int connectors = 0;
      int squares = 0;
      for (Filling page : pages) {
        misfits += page.fits() ? 0 : 1;
        squares += page.weight() * page.weight();
        for (Part part : page.parts()) {
          connectors += part.exits().size();
        }
      }
      return new Broken(
          cuts, pages.stream().map(Filling::parts).toList(), misfits, connectors, squares);
    }
  }

  /** The parts of each page. */
  List<List<Part>> pages() {
    Broken best =
        FILLS.stream()
            .map(fill -> broken(grown(fill), Integer.MAX_VALUE).orElseThrow())
            .map(grown -> new Search(grown, MOST_ATTEMPTS).descended())
            .min(EVEN)
            .orElseThrow();
    return best.pages.size() == 1 ? best.pages : kicked(best).pages;
  }

  private BitSet grown(double fill) {
    Growth growth = new Growth(printer::fits, fill * Part.FULL);
    BitSet grown = new BitSet();
    trees.forEach(tree -> grown.or(cuts.at(growth.cuts(tree))));
    return grown;
  }

  /** The pages for some cuts; none if they are more than a number. */
  private Optional<Broken> broken(BitSet chosen, int most) {
    Broken before = known.get(chosen);
    if (before != null) {
      return before.pages.size() <= most ? Optional.of(before) : Optional.empty();
    }
    return most <= tooFew.getOrDefault(chosen, 0) ? Optional.empty() : tried(chosen, most);
  }

  private Optional<Broken> tried(BitSet chosen, int most) {
    Optional<Broken> broken =
        new Packing(printer, most)
            .pages(start, cuts.parts(chosen))
            .map(pages -> Broken.of(chosen, pages));
    broken.ifPresentOrElse(found -> known.put(chosen, found), () -> tooFew.put(chosen, most));
    return broken;
  }

  /** Leaves the place where no change helps by a few changes at random, again and again. */
  private Broken kicked(Broken found) {
    Random random = new Random(SEED);
    Broken best = found;
    int left = MOST_KICKED * MANY / Math.max(MANY, cuts.count());
    while (left > 0 && cuts.count() > 0) {
      BitSet changed = (BitSet) best.cuts.clone();
      for (int i = 0; i < KICKS; i++) {
        changed.flip(random.nextInt(cuts.count()));
      }
      Search search = new Search(broken(changed, Integer.MAX_VALUE).orElseThrow(), left);
      Broken next = search.descended();
      left -= Math.max(1, search.attempts);
      best = EVEN.compare(next, best) < 0 ? next : best;
    }
    return best;
  }

  /** One way down to cuts that no single change makes better. */
  private final class Search {
    private Broken best;
    private final int most;
    private int attempts;

    Search(Broken beginning, int most) {
      this.best = beginning;
      this.most = most;
    }

    Broken descended() {
      descend(EMPTIED);
      descend(EVEN);
      return best;
    }

    /** Tries change after change and keeps what is better, until a whole round gains nothing. */
    void descend(Comparator<Broken> order) {
      Predicate<BitSet> gain = changed -> gain(changed, order);
      int idle = 0;
      for (int place = 0; idle < cuts.count(); place = (place + 1) % cuts.count()) {
        idle = changes(place).stream().anyMatch(gain) ? 0 : idle + 1;
      }
    }

    private boolean gain(BitSet changed, Comparator<Broken> order) {
      if (attempts++ >= most) {
        return false;
      }
      // Fewer misfits may cost a page more.
      int pages = best.misfits > 0 ? Integer.MAX_VALUE : best.pages.size();
      Optional<Broken> better =
          broken(changed, pages).filter(broken -> order.compare(broken, best) < 0);
      better.ifPresent(broken -> best = broken);
      return better.isPresent();
    }

    /** What can be done about a place: cut it, or cut others in its stead. */
    private List<BitSet> changes(int place) {
      BitSet flipped = (BitSet) best.cuts.clone();
      flipped.flip(place);
      List<BitSet> changes = new ArrayList<>(List.of(flipped));
      if (best.cuts.get(place)) {
        changes.add(union(flipped, cuts.below(place)));
        IntStream.range(0, cuts.count())
            .filter(other -> other != place && !best.cuts.get(other))
            .filter(other -> sameTree(place, other))
            .mapToObj(other -> union(flipped, only(other)))
            .forEach(changes::add);
      }
      return changes;
    }

    /** Whether two places would be in one part, or next to it, without a cut between them. */
    private boolean sameTree(int place, int other) {
      return head(place, place) == head(other, place);
    }

    /** The cut or the top that the part with a place begins with, a cut being left out. */
    private int head(int place, int without) {
      int head = place;
      while (head >= 0 && (head == without || !best.cuts.get(head))) {
        head = cuts.above(head);
      }
      return head;
    }
  }

  private static BitSet only(int place) {
    BitSet one = new BitSet();
    one.set(place);
    return one;
  }

  private static BitSet union(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.or(other);
    return both;
  }
}
