package io.faultwright.analysis.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The fewest outcomes of a rule's tests that show each test decide, found by trying sizes from the
 * smallest on; where that takes too long, few.
 */
final class FewestOutcomes {
  private static final int MOST_STEPS = 200_000;

  private final List<Wanted> wanted;
  private int steps;

  private FewestOutcomes(List<Wanted> wanted) {
    this.wanted = wanted;
  }

  /**
   * A test that has to be shown to decide.
   *
   * @param pairs the pairs of outcomes that show it; an outcome that a case has already costs
   *     nothing and is absent
   */
  record Wanted(List<Pair> pairs) {}

  /** New outcomes that together show a test decide. */
  record Pair(List<Outcomes> fresh) {}

  /** The fewest new outcomes. */
  static Set<Outcomes> of(List<Wanted> wanted) {
    List<Wanted> possible = wanted.stream().filter(one -> !one.pairs().isEmpty()).toList();
    return new FewestOutcomes(possible).search();
  }

  private Set<Outcomes> search() {
    Set<Outcomes> few = greedy();
    for (int size = 0; size < few.size(); size++) {
      Optional<Set<Outcomes>> found = within(new LinkedHashSet<>(), size);
      if (found.isPresent()) {
        return found.get();
      }
      if (steps > MOST_STEPS) {
        return few;
      }
    }
    return few;
  }

  /** Takes what adds least, again and again. */
  private Set<Outcomes> greedy() {
    Set<Outcomes> chosen = new LinkedHashSet<>();
    for (Optional<Wanted> next = tightest(chosen); next.isPresent(); next = tightest(chosen)) {
      chosen.addAll(options(next.get(), chosen).get(0).fresh());
    }
    return chosen;
  }

  /** At most so many more than those chosen. */
  private Optional<Set<Outcomes>> within(Set<Outcomes> chosen, int more) {
    Optional<Wanted> next = tightest(chosen);
    if (next.isEmpty()) {
      return Optional.of(chosen);
    }
    for (Pair pair : options(next.get(), chosen)) {
      int cost = cost(pair, chosen);
      if (cost > more || ++steps > MOST_STEPS) {
        return Optional.empty();
      }
      Set<Outcomes> larger = new LinkedHashSet<>(chosen);
      larger.addAll(pair.fresh());
      Optional<Set<Outcomes>> found = within(larger, more - cost);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** Cheapest first. */
  private static List<Pair> options(Wanted wanted, Set<Outcomes> chosen) {
    return wanted.pairs().stream()
        .sorted(Comparator.comparingInt(pair -> cost(pair, chosen)))
        .toList();
  }

  private static int cost(Pair pair, Set<Outcomes> chosen) {
    return (int) pair.fresh().stream().filter(one -> !chosen.contains(one)).count();
  }

  /** What is not shown yet and can be in the fewest ways. */
  private Optional<Wanted> tightest(Set<Outcomes> chosen) {
    List<Wanted> open = new ArrayList<>();
    for (Wanted one : wanted) {
      if (one.pairs().stream().noneMatch(pair -> cost(pair, chosen) == 0)) {
        open.add(one);
      }
    }
    return open.stream().min(Comparator.comparingInt(one -> one.pairs().size()));
  }
}
