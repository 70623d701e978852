package io.faultwright.analysis.order;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.sequence.Patience;
import io.faultwright.sequence.TooManySets;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The orders of checks of a symptom, one for each group of equipment on which they differ. */
public final class ScopedOrders {
  /**
   * How often a set of situations is held against a result while an order is looked for. A number
   * and not a time, so that every machine prints the same charts.
   */
  private static final long WORK = 640_000;

  /** With so many times more for a quick order, a printed chart is of no use to anyone. */
  private static final int MOST = 4;

  /** With more results than this, every chart is too large. */
  private static final int MOST_RESULTS = 500;

  private final SymptomSpace symptom;
  private final Space space;
  private final List<Result> results;
  private final List<Question> questions;

  private ScopedOrders(SymptomSpace symptom, List<Result> results) {
    this.symptom = symptom;
    this.space = symptom.space();
    this.results = results;
    this.questions =
        Questions.of(symptom).stream().filter(question -> question.axis() != 0).toList();
  }

  /**
   * The orders, by the first of their builds; none where nothing is possible, or where the rules
   * contradict each other in too many ways.
   */
  public static List<ScopedOrder> of(SymptomSpace symptom) {
    return Results.upTo(MOST_RESULTS, symptom)
        .map(results -> new ScopedOrders(symptom, results).orders())
        .orElse(List.of());
  }

  private List<ScopedOrder> orders() {
    return Scopes.of(symptom, results).stream().map(this::order).toList();
  }

  private ScopedOrder order(BitSet cells) {
    Diagrams diagrams = space.diagrams();
    int situations = diagrams.and(symptom.possible(), diagrams.literal(0, cells));
    return new ScopedOrder(builds(cells), situations, checks(situations));
  }

  private Optional<CheckOrder> checks(int situations) {
    long effort = WORK / results.size();
    Patience patience = Patience.of(effort).atMost(MOST * effort);
    try {
      return Optional.of(new CheckOrder(symptom, results, questions, situations, patience));
    } catch (TooManySets many) {
      return Optional.empty();
    }
  }

  private List<Build> builds(BitSet cells) {
    return cells.stream()
        .mapToObj(space.axes().get(0).cells()::get)
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .sorted()
        .toList();
  }
}
