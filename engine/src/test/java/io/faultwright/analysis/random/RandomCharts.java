package io.faultwright.analysis.random;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.End;
import io.faultwright.model.Chart.Next;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.Chart.Target;
import io.faultwright.model.Condition;
import io.faultwright.model.Conditions;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Charts made of a random knowledge base: right wherever its rules answer and its readings can be
 * asked, and then spoiled by one change at most.
 */
public final class RandomCharts {
  private static final int MOST_STEPS = 60;
  private static final Answer NOBODY = new Answer.OfEscalation("nobody");

  private final Random random;
  private final SymptomSpace symptom;
  private final Diagrams diagrams;
  private final List<Result> results;
  private final TreeMap<String, Step> steps = new TreeMap<>();
  private final Map<Integer, String> known = new HashMap<>();
  private int line;
  private int ids;

  private RandomCharts(KnowledgeBase knowledge, Random random) {
    this.random = random;
    this.symptom = SymptomSpace.of(knowledge, knowledge.symptoms().get(RandomKnowledge.SYMPTOM));
    this.diagrams = symptom.space().diagrams();
    this.results = Results.of(symptom);
  }

  /** The knowledge base of a seed with one chart, {@code by-hand}; right more often than not. */
  public static KnowledgeBase of(long seed) {
    KnowledgeBase base = RandomKnowledge.of(seed);
    Random random = new Random(seed);
    RandomCharts made = new RandomCharts(base, random);
    return base.with(made.spoiled(made.chart()));
  }

  private Chart chart() {
    Symptom worked = symptom.symptom();
    Condition applies =
        random.nextInt(4) == 0 ? Conditions.is("family", "alpha") : Condition.ALWAYS;
    Target start = target(symptom.possible(), new BitSet());
    if (start instanceof End) {
      start = new Next(constant(start));
    }
    String first = start.next().orElseThrow();
    return new Chart("by-hand", place(), "by hand", worked.id(), applies, first, steps);
  }

  /** A step for a chart that has nothing to ask. */
  private String constant(Target end) {
    String id = "s" + ids++;
    List<Branch> both = new ArrayList<>();
    both.add(new Branch(place(), Conditions.is("family", "alpha"), end));
    both.add(new Branch(place(), Conditions.not(Conditions.is("family", "alpha")), end));
    steps.put(id, new Step(id, place(), "family", both));
    return id;
  }

  private Place place() {
    return new Place("charts", ++line, 1, 1);
  }

  private Target target(int situations, BitSet asked) {
    List<Result> left =
        results.stream()
            .filter(one -> diagrams.and(one.situations(), situations) != Diagrams.NONE)
            .toList();
    if (left.size() < 2 || steps.size() > MOST_STEPS) {
      return left.isEmpty() ? end(new TreeSet<>()) : end(left.get(0).answers());
    }
    if (known.containsKey(situations)) {
      return new Next(known.get(situations));
    }
    List<Integer> axes = splitting(situations, asked);
    return axes.isEmpty()
        ? end(left.get(0).answers())
        : new Next(step(situations, asked, axes.get(random.nextInt(axes.size()))));
  }

  private static End end(SortedSet<Answer> answers) {
    return new End(answers.isEmpty() ? Sorted.set(List.of(NOBODY)) : answers);
  }

  private List<Integer> splitting(int situations, BitSet asked) {
    BitSet[] occurring = diagrams.occurring(situations);
    List<Integer> axes = new ArrayList<>();
    for (int axis = 0; axis < occurring.length; axis++) {
      if (!asked.get(axis) && occurring[axis].cardinality() > 1 && askable(axis, occurring[axis])) {
        axes.add(axis);
      }
    }
    return axes;
  }

  private boolean askable(int axis, BitSet cells) {
    return cells.stream()
        .mapToObj(symptom.space().axes().get(axis).cells()::get)
        .allMatch(cell -> !(cell instanceof Cell.Stretch stretch) || isWhole(stretch.interval()));
  }

  /** Brute force can judge whole numbers only. */
  private static boolean isWhole(Interval interval) {
    return Stream.concat(interval.low().stream(), interval.high().stream())
        .allMatch(end -> end.value().getDenominator().equals(BigInteger.ONE));
  }

  private String step(int situations, BitSet asked, int axis) {
    String id = "s" + ids++;
    known.put(situations, id);
    Place place = place();
    BitSet more = (BitSet) asked.clone();
    more.set(axis);
    List<Branch> branches = new ArrayList<>();
    steps.put(id, new Step(id, place, "reserved", branches));
    Axis of = symptom.space().axes().get(axis);
    for (int cell : diagrams.occurring(situations)[axis].stream().toArray()) {
      BitSet one = new BitSet();
      one.set(cell);
      Optional<Condition> pattern = pattern(of, of.cells().get(cell));
      int there = diagrams.and(situations, diagrams.literal(axis, one));
      pattern.ifPresent(when -> branches.add(new Branch(place(), when, target(there, more))));
    }
    steps.put(id, new Step(id, place, checked(of), merged(branches)));
    return id;
  }

  /** Neighbours that end alike are written as one answer, as a person would. */
  private List<Branch> merged(List<Branch> branches) {
    List<Branch> merged = new ArrayList<>();
    for (Branch branch : branches) {
      Branch last = merged.isEmpty() ? branch : merged.get(merged.size() - 1);
      if (last != branch && last.target().equals(branch.target()) && random.nextBoolean()) {
        Condition either = new Condition.Any(List.of(last.when(), branch.when()));
        merged.set(merged.size() - 1, new Branch(last.place(), either, last.target()));
      } else {
        merged.add(branch);
      }
    }
    return merged;
  }

  private static String checked(Axis axis) {
    if (axis.subject() instanceof Axis.OfReading of) {
      return of.reading();
    }
    return axis.subject() instanceof Axis.OfSide of ? of.reading() : "model";
  }

  /** Nobody may ask whether something computed cannot be taken. */
  private static boolean isObserved(Axis axis) {
    return axis.subject() instanceof Axis.OfReading of
        && !of.reading().equals(RandomKnowledge.DIFFERENCE);
  }

  private static Optional<Condition> pattern(Axis axis, Cell cell) {
    String subject = checked(axis);
    if (cell instanceof Cell.Builds builds) {
      return Optional.of(builds(builds.builds()));
    }
    if (cell instanceof Cell.Word word) {
      return Optional.of(Conditions.is(subject, word.value()));
    }
    if (cell instanceof Cell.Stretch stretch) {
      return Optional.of(Conditions.in(subject, stretch.interval()));
    }
    if (cell instanceof Cell.SideOf side) {
      return Optional.of(Conditions.limits(subject, side.side()));
    }
    return cell instanceof Cell.NotTaken && isObserved(axis)
        ? Optional.of(Conditions.notTaken(subject))
        : Optional.empty();
  }

  /** Those builds and no others: each model with its versions. */
  private static Condition builds(List<Build> builds) {
    List<Condition> each = new ArrayList<>();
    for (Build build : builds) {
      List<Condition> facts = new ArrayList<>();
      facts.add(Conditions.is("model", build.model().id()));
      build.software().ifPresent(version -> facts.add(Conditions.is("software", version.text())));
      each.add(new Condition.All(facts));
    }
    return new Condition.Any(each);
  }

  /** The chart with one change, or as it is. */
  private Chart spoiled(Chart chart) {
    Step step = List.copyOf(chart.steps().values()).get(random.nextInt(chart.steps().size()));
    List<Branch> branches = new ArrayList<>(step.branches());
    int kind = random.nextInt(8);
    if (branches.isEmpty() || kind == 0) {
      return chart;
    }
    int at = random.nextInt(branches.size());
    Branch branch = branches.get(at);
    switch (kind) {
      case 1 -> branches.set(at, with(branch, end(anything().answers())));
      case 2 -> branches.set(at, with(branch, new Next(anyStep(chart))));
      case 3 -> branches.remove(at);
      case 4 -> {
        Condition other = branches.get(random.nextInt(branches.size())).when();
        Condition wide = new Condition.Any(List.of(branch.when(), other));
        branches.set(at, new Branch(branch.place(), wide, branch.target()));
      }
      case 5 -> {
        Branch other = branches.get(random.nextInt(branches.size()));
        branches.set(at, with(branch, other.target()));
      }
      case 6 -> {
        String spare = constant(end(anything().answers()));
        TreeMap<String, Step> more = new TreeMap<>(chart.steps());
        more.put(spare, steps.get(spare));
        return chart.with(more);
      }
      default -> {
        return chart;
      }
    }
    TreeMap<String, Step> changed = new TreeMap<>(chart.steps());
    changed.put(step.id(), new Step(step.id(), step.place(), step.check(), branches));
    return chart.with(changed);
  }

  private static Branch with(Branch branch, Target target) {
    return new Branch(branch.place(), branch.when(), target);
  }

  private String anyStep(Chart chart) {
    return List.copyOf(chart.steps().keySet()).get(random.nextInt(chart.steps().size()));
  }

  private Result anything() {
    return results.isEmpty()
        ? new Result(Sorted.set(List.of(NOBODY)), Diagrams.ALL, 1)
        : results.get(random.nextInt(results.size()));
  }
}
