package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Goal;
import io.faultwright.analysis.coverage.Threshold.Side;
import io.faultwright.model.Band;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Truth;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** The boundaries of tests on quantities. */
public final class Edges {
  private final KnowledgeBase kb;
  private final String symptom;
  private final boolean three;
  private final GoalWords words;

  /**
   * @param three whether a threshold has three values, or two
   */
  public Edges(KnowledgeBase kb, String symptom, boolean three) {
    this.kb = kb;
    this.symptom = symptom;
    this.three = three;
    this.words = new GoalWords(kb);
  }

  /** The edges of a stretch. */
  public List<Edge> ofStretch(Test test) {
    List<Edge> edges = new ArrayList<>();
    for (Threshold threshold : Threshold.of((InInterval) test.pattern())) {
      for (Side side : Threshold.sides(three)) {
        edges.add(ofThreshold(test, threshold, side));
      }
    }
    return edges;
  }

  private Edge ofThreshold(Test test, Threshold threshold, Side side) {
    Interval region = threshold.side(side, step(test.subject()), three);
    Condition where = in(test.subject(), region, test.place());
    String said = words.threshold(test.subject(), threshold, side);
    return new Edge(goal(said, test.place()), said, false, where, one -> one.meets(where));
  }

  /** The edges of every row of a reading's limits. */
  List<List<Edge>> ofLimits(String reading) {
    LimitsTable table = kb.limits().get(reading);
    return table.rows().stream().map(row -> ofRow(table, row)).toList();
  }

  private List<Edge> ofRow(LimitsTable table, Row row) {
    List<Edge> edges = new ArrayList<>();
    for (Side side : Threshold.sides(three)) {
      row.low().ifPresent(low -> edges.add(ofLimit(table, row, low, true, side)));
      row.high().ifPresent(high -> edges.add(ofLimit(table, row, high, false, side)));
    }
    return edges;
  }

  private Edge ofLimit(LimitsTable table, Row row, BigFraction limit, boolean low, Side side) {
    String reading = table.reading();
    Threshold threshold = new Threshold(limit, low);
    List<Condition> parts = new ArrayList<>(List.of(row.builds()));
    for (int i = 0; i < row.at().size(); i++) {
      parts.add(in(table.drivers().get(i), from(table, row.at().get(i)), row.place()));
    }
    parts.add(in(reading, threshold.side(side, step(reading), three), row.place()));
    RowReach reach = new RowReach(table, row);
    Predicate<Sighting> shows =
        one ->
            one.worked()
                && one.observed().met(row.builds()) == Truth.TRUE
                && reach.includes(one.observed())
                && isBeside(one, reading, low, side);
    String said = words.limit(table, row, low, threshold, side);
    return new Edge(
        goal(said, row.place()), said + row.place(), true, new Condition.All(parts), shows);
  }

  /** Beside the limit that holds in a case, wherever between the rows that is. */
  private boolean isBeside(Sighting one, String reading, boolean low, Side side) {
    Optional<BigFraction> limit =
        one.observed().band(reading).flatMap(low ? Band::low : Band::high);
    return limit.isPresent()
        && one.observed()
            .amount(reading)
            .filter(new Threshold(limit.get(), low).side(side, step(reading), three)::contains)
            .isPresent();
  }

  /** A stretch's upper end belongs to the row that begins there. */
  private static Interval from(LimitsTable table, Interval at) {
    boolean steps = table.between().equals(Optional.of(LimitsTable.Between.STEP));
    return steps && !at.low().equals(at.high())
        ? new Interval(at.low(), at.high().map(end -> new End(end.value(), false)))
        : at;
  }

  private BigFraction step(String reading) {
    return Threshold.step(kb.readings().get(reading));
  }

  private static Test in(String reading, Interval interval, Place place) {
    return new Test(reading, new InInterval(interval), place);
  }

  private Goal goal(String said, Place place) {
    return new Goal(Criterion.BOUNDARIES, symptom, Optional.empty(), said, place);
  }
}
