package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Prospect.Expected;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.analysis.ambiguity.Asking.State;
import io.faultwright.model.Effort;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to read next, by the effort that is to be expected until one outcome is left.
 *
 * <p>After the first step, what tells most for its effort is read each time: bits for each weighted
 * minute. Of the first steps the one is best after which this takes least. The rule is from memory
 * after Pattipati and Alexandridis, "Application of heuristic search and information theory to
 * sequential fault diagnosis", IEEE Trans. Systems, Man, and Cybernetics 20(4), 1990; looking one
 * step ahead of such a rule, after Bertsekas and Castañon, "Rollout algorithms for stochastic
 * scheduling problems", Journal of Heuristics 5, 1999. It need not be the best order there is.
 */
final class NextSteps {
  /** With more comparisons than this, expectations take too long to wait for. */
  private static final long MOST_WORK = 400_000;

  private static final Comparator<Ask> TELLING =
      Comparator.comparing(Ask::pace)
          .reversed()
          .thenComparing(ask -> ask.taking().effort())
          .thenComparing(Ask::reading);

  private final Asking asking;
  private final State start;
  private final Map<State, Expected> known = new HashMap<>();

  NextSteps(OpenCase open) {
    this.asking = new Asking(open.space(), open.results());
    this.start = new State(open.space().possible(), open.taken());
  }

  private static final class TooMany extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooMany() {
      super("too much work", null, false, false);
    }
  }

  /** The steps, the best first; none where one outcome is left. */
  List<Step> steps() {
    if (asking.isDecided(start.situations())) {
      return List.of();
    }
    List<Ask> asks = telling(asking.possible(start));
    Optional<Map<Ask, Expected>> expected = expected(asks);
    Comparator<Ask> least =
        Comparator.comparing(
            ask -> expected.map(all -> Math.round(all.get(ask).weighted() * 1e6)).orElse(0L));
    return asks.stream()
        .sorted(least.thenComparing(TELLING))
        .map(ask -> step(ask, expected.map(all -> all.get(ask))))
        .toList();
  }

  /** Those that tell something, unless nothing tells anything by itself. */
  private static List<Ask> telling(List<Ask> asks) {
    List<Ask> telling = asks.stream().filter(ask -> ask.pace() > 0).toList();
    return (telling.isEmpty() ? asks : telling).stream().sorted(TELLING).toList();
  }

  private Optional<Map<Ask, Expected>> expected(List<Ask> asks) {
    Map<Ask, Expected> expected = new HashMap<>();
    try {
      asks.forEach(ask -> expected.put(ask, after(start, ask)));
      return Optional.of(expected);
    } catch (TooMany many) {
      return Optional.empty();
    }
  }

  private Step step(Ask ask, Optional<Expected> expected) {
    double decided =
        ask.parts().stream()
            .filter(asking::isDecided)
            .mapToDouble(part -> likelihood(part, start))
            .sum();
    return new Step(
        ask.reading(),
        ask.taking(),
        Ratios.rounded(ask.bits()),
        Ratios.rounded(decided),
        expected.map(
            all -> new Expected(Ratios.rounded(all.minutes()), Ratios.rounded(all.weighted()))));
  }

  private double likelihood(int part, State state) {
    return asking.likelihood(part) / asking.likelihood(state.situations());
  }

  /** What remains where the most telling step is taken each time. */
  private Expected expected(State state) {
    if (asking.isDecided(state.situations())) {
      return Expected.NOTHING;
    }
    Expected remaining = known.get(state);
    if (remaining == null) {
      if (asking.work() > MOST_WORK) {
        throw new TooMany();
      }
      remaining = after(state, asking.possible(state).stream().min(TELLING).orElseThrow());
      known.put(state, remaining);
    }
    return remaining;
  }

  /** What remains from a step on, the step included. */
  private Expected after(State state, Ask ask) {
    Effort effort = ask.taking().effort();
    Expected all = new Expected(effort.minutes().doubleValue(), effort.weighted().doubleValue());
    for (int part : ask.parts()) {
      Expected then = expected(state.after(ask.taking(), part));
      all = all.plus(then, likelihood(part, state));
    }
    return all;
  }
}
