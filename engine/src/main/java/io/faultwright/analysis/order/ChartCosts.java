package io.faultwright.analysis.order;

import io.faultwright.analysis.order.ChartCost.EarlyHazard;
import io.faultwright.analysis.order.ChartSteps.Line;
import io.faultwright.analysis.order.CheapestRest.Rest;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Step;
import io.faultwright.sequence.Check;
import io.faultwright.sequence.Outlay;
import io.faultwright.sequence.TooManySets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Walks an authored chart through the situations it is for and sets its cost beside the optimum.
 *
 * <p>The optimum is that of a technician who knows the machine: for each class of equipment that
 * the rules tell apart the cheapest order on it alone, weighed by likelihood. A chart may ask the
 * nameplate anywhere at no cost, and so may the optimum; it is never dearer than the printed
 * charts, of which one may serve several machines without asking which it is. It keeps what the
 * symptom wants (`first`, `after`, hazardous checks last); a chart that does not can cost less.
 *
 * <p>At each step that some situations come to, what is lost is the cost of its check and of the
 * cheapest order from its answers on, less that of the cheapest order from there, all with what is
 * paid already. These losses add up to exactly the difference.
 */
public final class ChartCosts {
  /** With more results than this, every order is too large. */
  private static final int MOST_RESULTS = 500;

  /** More ways to steps than this are not followed. */
  private static final int MOST_WAYS = 2_000;

  private final Chart chart;
  private final Diagrams diagrams;
  private final List<Question> questions;
  private final SymptomSituations situations;
  private final ChartSteps steps;
  private final List<Outlay> outlays;
  private final List<Check> checks;
  private final CheapestRest cheapest;
  private final Detours detours;
  private final List<Integer> machines;
  private Spent spent = Spent.NOTHING;
  private int ways;

  private ChartCosts(SymptomSpace symptom, List<Result> results, Chart chart, int all) {
    this.chart = chart;
    this.diagrams = symptom.space().diagrams();
    this.questions =
        Questions.of(symptom).stream().filter(question -> question.axis() != 0).toList();
    this.situations = new SymptomSituations(symptom, results, questions, all);
    this.steps = new ChartSteps(symptom.space(), chart);
    Prices prices =
        new Prices(symptom, Stream.concat(questions.stream(), steps.questions().stream()).toList());
    this.outlays = prices.outlays();
    this.checks = prices.checks();
    this.cheapest =
        new CheapestRest(diagrams, told(symptom, results), situations, outlays, ofTheRules());
    this.detours = new Detours(chart, questions);
    this.machines = machines(symptom.space().axes().get(0));
  }

  private static List<Integer> told(SymptomSpace symptom, List<Result> results) {
    return Stream.concat(results.stream().map(Result::situations), symptom.referrals().stream())
        .toList();
  }

  private List<Check> ofTheRules() {
    return checks.subList(0, questions.size()).stream()
        .map(
            check ->
                new Check(check.outlays(), check.after().get(0, questions.size()), check.late()))
        .toList();
  }

  private List<Integer> machines(Axis equipment) {
    TreeMap<Integer, BitSet> groups = new TreeMap<>();
    for (int cell = 0; cell < equipment.cells().size(); cell++) {
      groups.computeIfAbsent(equipment.groups().get(cell), fresh -> new BitSet()).set(cell);
    }
    return groups.values().stream().map(cells -> diagrams.literal(0, cells)).toList();
  }

  /**
   * The cost of a chart.
   *
   * @param chart that brings each of the situations to an end, without a loop
   * @param all the situations, at least one, in a space in which the chart's answers can be asked
   *     about
   * @return empty where there are too many ways, or results, for an optimum
   */
  public static Optional<ChartCost> of(SymptomSpace symptom, Chart chart, int all) {
    try {
      return Results.upTo(MOST_RESULTS, symptom)
          .flatMap(results -> new ChartCosts(symptom, results, chart, all).cost(all));
    } catch (TooManySets many) {
      return Optional.empty();
    }
  }

  private Optional<ChartCost> cost(int all) {
    double likelihood = cheapest.likelihood(all);
    if (likelihood == 0) {
      return Optional.empty();
    }
    OrderCost optimum = optimum(all, likelihood);
    follow(chart.steps().get(chart.start()), all, 1, Way.START, Optional.empty());
    if (ways > MOST_WAYS) {
      return Optional.empty();
    }
    ChartCost cost =
        new ChartCost(
            spent.minutes() / likelihood,
            spent.weighted() / likelihood,
            optimum,
            detours.greatest(likelihood),
            detours.hazard());
    return Optional.of(cost.difference() > 0 ? cost : cost.withoutDetour());
  }

  private OrderCost optimum(int all, double likelihood) {
    double minutes = 0;
    double weighted = 0;
    double atLeast = 0;
    for (int machine : machines) {
      int part = diagrams.and(all, machine);
      if (part != Diagrams.NONE) {
        Rest rest = cheapest.of(part, Way.START);
        minutes += rest.minutes();
        weighted += rest.weighted();
        atLeast += rest.atLeast();
      }
    }
    return new OrderCost(minutes / likelihood, weighted / likelihood, atLeast / likelihood);
  }

  /**
   * Goes on from a step.
   *
   * @param factor what likelihoods count here: what only the chart asks about divides situations
   *     that the rules do not tell apart, and then its answers share their likelihood
   * @param hazard the first hazardous step on the way that could have waited
   */
  private void follow(Step step, int set, double factor, Way way, Optional<Step> hazard) {
    if (++ways > MOST_WAYS) {
      return;
    }
    BitSet read = read(step);
    Way then = after(step, read, way);
    Spent price = price(read, way);
    double likelihood = cheapest.likelihood(set);
    spent = spent.plus(price.times(likelihood * factor));
    List<Line> parts = parts(step, set);
    double divided = parts.stream().mapToDouble(part -> cheapest.likelihood(part.where())).sum();
    double share = divided == 0 ? 1 : likelihood / divided;
    for (int machine : machines) {
      lose(step, diagrams.and(set, machine), parts, price, new Ways(way, then, factor, share));
    }
    Optional<Step> early = early(step, set, read, way, hazard, likelihood * factor);
    parts.forEach(
        part ->
            part.target()
                .next()
                .ifPresent(
                    next ->
                        follow(
                            chart.steps().get(next), part.where(), factor * share, then, early)));
  }

  /** How one comes to a step and leaves it, and what likelihoods count before and after it. */
  private record Ways(Way before, Way after, double factor, double share) {}

  private void lose(Step step, int here, List<Line> parts, Spent price, Ways ways) {
    if (here == Diagrams.NONE) {
      return;
    }
    Rest instead = cheapest.of(here, ways.before);
    double weighted = price.weighted() * cheapest.likelihood(here) - instead.weighted();
    for (Line part : parts) {
      int both = diagrams.and(here, part.where());
      if (both != Diagrams.NONE && part.target().next().isPresent()) {
        weighted += ways.share * cheapest.of(both, ways.after).weighted();
      }
    }
    detours.lose(step.id(), instead, weighted * ways.factor);
  }

  /** The situations that take each way on; where two answers hold, the first of them. */
  private List<Line> parts(Step step, int set) {
    List<Line> parts = new ArrayList<>();
    int left = set;
    for (Line line : steps.lines(step.id())) {
      int part = diagrams.and(left, line.where());
      left = diagrams.minus(left, part);
      if (part != Diagrams.NONE) {
        parts.add(new Line(line.target(), part));
      }
    }
    return parts;
  }

  /** What has to be paid for a step, if nothing is paid yet. */
  private BitSet read(Step step) {
    BitSet read = new BitSet();
    asked(step).forEach(check -> read.or(check.outlays()));
    return read;
  }

  private Stream<Check> asked(Step step) {
    return steps.read(step.id()).stream().map(position -> checks.get(questions.size() + position));
  }

  private Spent price(BitSet read, Way way) {
    Spent price = Spent.NOTHING;
    BitSet open = (BitSet) read.clone();
    open.andNot(way.paid());
    for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
      price = price.plus(new Spent(outlays.get(i).minutes(), outlays.get(i).weighted()));
    }
    return price;
  }

  private Way after(Step step, BitSet read, Way way) {
    BitSet paid = (BitSet) way.paid().clone();
    paid.or(read);
    BitSet asked = (BitSet) way.asked().clone();
    asked.or(about(step));
    return new Way(paid, asked, false);
  }

  private BitSet about(Step step) {
    BitSet about = new BitSet();
    for (int i = 0; i < questions.size(); i++) {
      about.set(i, questions.get(i).subject().equals(step.check()));
    }
    return about;
  }

  /** Notes an easy check after a hazardous one; the first hazardous one from here on. */
  private Optional<Step> early(
      Step step, int set, BitSet read, Way way, Optional<Step> hazard, double likelihood) {
    BitSet open = (BitSet) read.clone();
    open.andNot(way.paid());
    boolean late = asked(step).anyMatch(Check::late);
    if (open.isEmpty() || late && situations.first(set).intersects(about(step))) {
      return hazard;
    }
    if (late) {
      return hazard.or(() -> Optional.of(step));
    }
    hazard.ifPresent(
        before ->
            detours.hazard(new EarlyHazard(before.id(), before.check(), step.check()), likelihood));
    return hazard;
  }
}
