package io.faultwright.analysis.quiz;

import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.judge.Ruling;
import io.faultwright.analysis.outcome.Needs;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A symptom on which items are made: its situations, what is told in them, and what of them is
 * known once some readings are shown.
 */
final class Ground {
  /** With more results than this the rules contradict each other everywhere. */
  private static final int MOST_RESULTS = 500;

  private final SymptomSpace symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final List<Result> results;
  private final List<SortedSet<String>> needs;
  private final KnowledgeBase kb;
  private final Judge judge;
  private final List<Build> builds;
  private final Map<SortedMap<String, String>, Integer> machines = new HashMap<>();

  private Ground(
      SymptomSpace symptom, List<Result> results, Excerpts excerpts, List<Build> builds) {
    this.kb = excerpts.whole();
    this.judge = new Judge(excerpts.forDrawing(symptom.symptom()));
    this.symptom = symptom;
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.results = results;
    this.needs = new Needs(space).all();
    this.builds = List.copyOf(builds);
    List<Cell> cells = space.axes().get(0).cells();
    for (int cell = 0; cell < cells.size(); cell++) {
      for (Build build : ((Cell.Builds) cells.get(cell)).builds()) {
        machines.put(build.facts(), cell);
      }
    }
  }

  /**
   * The ground of a symptom.
   *
   * @param taught the machines of which items are made
   * @return empty where there is none of them, or the rules contradict each other too much
   */
  static Optional<Ground> of(Excerpts excerpts, Symptom symptom, Predicate<Build> taught) {
    KnowledgeBase kb = excerpts.whole();
    List<Build> builds = SymptomSpace.builds(kb, symptom).stream().filter(taught).toList();
    if (builds.isEmpty()) {
      return Optional.empty();
    }
    SymptomSpace space = SymptomSpace.of(kb, symptom);
    return Results.upTo(MOST_RESULTS, space)
        .map(results -> new Ground(space, results, excerpts, builds));
  }

  KnowledgeBase kb() {
    return kb;
  }

  Symptom symptom() {
    return symptom.symptom();
  }

  SymptomSpace symptomSpace() {
    return symptom;
  }

  Space space() {
    return space;
  }

  Diagrams diagrams() {
    return diagrams;
  }

  /** What is told, by the situations in which it is. */
  List<Result> results() {
    return results;
  }

  /** The machines of which items are made. */
  List<Build> builds() {
    return builds;
  }

  /** The machines of which items are made, in groups that nothing in the symptom tells apart. */
  List<List<Build>> groups() {
    return space.axes().get(0).cells().stream()
        .map(cell -> ((Cell.Builds) cell).builds().stream().filter(builds::contains).toList())
        .filter(group -> !group.isEmpty())
        .toList();
  }

  /** All situations on a machine, and on those that nothing tells apart from it. */
  int on(Build build) {
    return diagrams.literal(0, only(machines.get(build.facts())));
  }

  /** Ids of the readings that have to be shown before the cell of an axis is known. */
  SortedSet<String> needs(int axis) {
    return needs.get(axis);
  }

  /** The axes whose cells cannot be known without a reading. */
  List<Integer> touched(String reading) {
    return IntStream.range(1, needs.size())
        .filter(axis -> needs.get(axis).contains(reading))
        .boxed()
        .toList();
  }

  /** Whether a machine has a reading. */
  boolean has(Build build, String reading) {
    Reading known = kb.readings().get(reading);
    return build.satisfies(known.applies());
  }

  Observed observe(Situation shown) {
    return judge.observe(symptom(), shown);
  }

  /** What the rules say of what is shown, in three-valued logic. */
  Ruling ruling(Situation shown) {
    return judge.decide(symptom(), observe(shown));
  }

  /** For each axis the cell that is shown; -1 where it is not known. */
  int[] cells(Situation shown) {
    Observed observed = observe(shown);
    int[] cells = new int[space.axes().size()];
    cells[0] = machines.getOrDefault(shown.equipment(), -1);
    for (int axis = 1; axis < cells.length; axis++) {
      cells[axis] = cell(axis, observed);
    }
    return cells;
  }

  /** The cell of an axis; -1 where it is not known. */
  int cell(int axis, Observed observed) {
    Axis.Subject subject = space.axes().get(axis).subject();
    return subject instanceof Axis.OfReading of
        ? ofValue(axis, observed, of.reading())
        : ofSide(axis, observed, ((Axis.OfSide) subject).reading());
  }

  private int ofValue(int axis, Observed observed, String reading) {
    return isAbsent(observed, reading)
        ? position(axis, Cell.Absent.class::isInstance)
        : observed
            .value(reading)
            .map(value -> position(axis, cell -> holds(cell, value)))
            .orElse(-1);
  }

  private boolean isAbsent(Observed observed, String reading) {
    return observed.builds().stream().noneMatch(build -> has(build, reading));
  }

  private static boolean holds(Cell cell, Value value) {
    return value.match(
        word -> cell instanceof Cell.Word is && is.value().equals(word.id()),
        number -> cell instanceof Cell.Stretch in && in.interval().contains(number.amount()),
        () -> cell instanceof Cell.NotTaken);
  }

  private int ofSide(int axis, Observed observed, String reading) {
    List<String> all = new ArrayList<>(kb.limits().get(reading).drivers());
    all.add(reading);
    if (all.stream().anyMatch(id -> isAbsent(observed, id))) {
      return position(axis, Cell.Absent.class::isInstance);
    }
    if (all.stream().anyMatch(id -> observed.value(id).filter(Ground::isNotTaken).isPresent())) {
      return position(axis, Cell.NotTaken.class::isInstance);
    }
    if (all.stream().anyMatch(id -> observed.amount(id).isEmpty())) {
      return -1;
    }
    BigFraction amount = observed.amount(reading).orElseThrow();
    return observed
        .band(reading)
        .map(band -> band.side(amount))
        .map(side -> position(axis, cell -> cell instanceof Cell.SideOf at && at.side() == side))
        .orElseGet(() -> position(axis, Cell.NoFigure.class::isInstance));
  }

  private static boolean isNotTaken(Value value) {
    return value instanceof Value.NotTaken;
  }

  private int position(int axis, Predicate<Cell> wanted) {
    List<Cell> cells = space.axes().get(axis).cells();
    return IntStream.range(0, cells.size())
        .filter(cell -> wanted.test(cells.get(cell)))
        .findFirst()
        .orElse(-1);
  }

  /**
   * All possible situations that agree with the cells that are known, and perhaps more: what is
   * told in all of them is proved for what is shown.
   */
  int agreeing(int[] cells) {
    int agreeing = symptom.possible();
    for (int axis = cells.length - 1; axis >= 0; axis--) {
      if (cells[axis] >= 0) {
        agreeing = diagrams.and(agreeing, diagrams.literal(axis, only(cells[axis])));
      }
    }
    return agreeing;
  }

  int agreeing(Situation shown) {
    return agreeing(cells(shown));
  }

  private static BitSet only(int cell) {
    BitSet only = new BitSet();
    only.set(cell);
    return only;
  }

  /** The one result of all situations that agree; empty where there are several. */
  Optional<Result> proved(Situation shown) {
    int agreeing = agreeing(shown);
    return results.stream()
        .filter(result -> agreeing != Diagrams.NONE)
        .filter(result -> diagrams.within(agreeing, result.situations()))
        .findFirst();
  }

  /** The results of which one answer is all that is told. */
  List<Result> single() {
    return results.stream().filter(result -> result.answers().size() == 1).toList();
  }

  static Answer only(Result result) {
    return result.answers().first();
  }

  /** The same with some readings only. */
  static Situation showing(Situation full, Iterable<String> readings) {
    SortedMap<String, Value> shown = new TreeMap<>();
    for (String reading : readings) {
      Optional.ofNullable(full.readings().get(reading))
          .ifPresent(value -> shown.put(reading, value));
    }
    return new Situation(full.equipment(), shown);
  }

  /** The same with another value of a reading. */
  static Situation with(Situation situation, String reading, Value value) {
    SortedMap<String, Value> readings = new TreeMap<>(situation.readings());
    readings.put(reading, value);
    return new Situation(situation.equipment(), readings);
  }

  /** The same on another machine. */
  static Situation on(Build build, Situation situation) {
    return new Situation(build.facts(), situation.readings());
  }

  /** The results that can be met among some situations, in their order. */
  List<Result> met(int situations) {
    List<Result> met = new ArrayList<>();
    for (Result result : results) {
      if (diagrams.and(situations, result.situations()) != Diagrams.NONE) {
        met.add(result);
      }
    }
    return met;
  }
}
