package io.faultwright.analysis.order;

import io.faultwright.analysis.order.ChartCost.Detour;
import io.faultwright.analysis.order.ChartCost.EarlyHazard;
import io.faultwright.analysis.order.CheapestRest.Rest;
import io.faultwright.model.Chart;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the steps of a chart cost beyond the cheapest order, and what that asks in their place. */
final class Detours {
  private final Chart chart;
  private final List<Question> questions;
  private final SortedMap<String, Lost> lost = new TreeMap<>();
  private final SortedMap<String, Double> hazards = new TreeMap<>();
  private final Map<String, EarlyHazard> early = new TreeMap<>();

  Detours(Chart chart, List<Question> questions) {
    this.chart = chart;
    this.questions = questions;
  }

  /** What is lost at a step, in all and by what the cheapest order asks there instead. */
  private static final class Lost {
    private double weighted;
    private final SortedMap<String, Double> better = new TreeMap<>();
    private final SortedMap<String, BitSet> later = new TreeMap<>();
  }

  /** Adds what is lost at a step on one of the ways to it, on one machine. */
  void lose(String step, Rest instead, double weighted) {
    Lost at = lost.computeIfAbsent(step, fresh -> new Lost());
    at.weighted += weighted;
    String better =
        instead.first().isPresent() ? questions.get(instead.first().getAsInt()).subject() : "";
    at.better.merge(better, weighted, Double::sum);
    at.later.computeIfAbsent(better, fresh -> new BitSet()).or(instead.asked());
  }

  /** Notes that a hazardous check comes before an easy one, and how likely that is. */
  void hazard(EarlyHazard hazard, double likelihood) {
    String key = hazard.step() + " " + hazard.before();
    hazards.merge(key, likelihood, Double::sum);
    early.put(key, hazard);
  }

  /** The most likely one. */
  Optional<EarlyHazard> hazard() {
    return most(hazards).map(early::get);
  }

  /**
   * The step at which most is lost.
   *
   * @param likelihood of everything
   */
  Optional<Detour> greatest(double likelihood) {
    SortedMap<String, Double> totals = new TreeMap<>();
    lost.forEach((step, at) -> totals.put(step, at.weighted));
    return most(totals).flatMap(step -> detour(step, lost.get(step), likelihood));
  }

  private Optional<Detour> detour(String step, Lost at, double likelihood) {
    String check = chart.steps().get(step).check();
    SortedMap<String, Double> others = new TreeMap<>(at.better);
    others.remove(check);
    return most(others)
        .filter(better -> others.get(better) > 0)
        .map(
            better ->
                new Detour(
                    step,
                    check,
                    Optional.of(better).filter(id -> !id.isEmpty()),
                    asks(at.later.get(better), check),
                    at.weighted / likelihood));
  }

  private boolean asks(BitSet asked, String check) {
    return asked.stream().anyMatch(position -> questions.get(position).subject().equals(check));
  }

  /** The key of the greatest value; of equal ones the first. */
  private static Optional<String> most(SortedMap<String, Double> values) {
    return values.entrySet().stream()
        .min(Comparator.comparingDouble(entry -> -entry.getValue()))
        .map(Map.Entry::getKey);
  }
}
