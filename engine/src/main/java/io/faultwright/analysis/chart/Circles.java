package io.faultwright.analysis.chart;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/** Where a chart leads back to a step that was done before. */
final class Circles {
  private final ChartSpace space;
  private final Chart chart;
  private final Diagrams diagrams;
  private final Reach reach;

  Circles(ChartSpace space, Reach reach) {
    this.space = space;
    this.chart = space.chart();
    this.diagrams = space.diagrams();
    this.reach = reach;
  }

  /**
   * A circle.
   *
   * @param steps its steps, from the one that stands first in the file
   * @param situations possible situations that go round it for ever; none where nobody does
   */
  record Circle(List<Step> steps, int situations) {
    Circle {
      steps = List.copyOf(steps);
    }
  }

  /** A circle for each group of steps that lead to each other. */
  List<Circle> all() {
    List<Circle> circles = new ArrayList<>();
    Set<String> seen = new TreeSet<>();
    for (String step : chart.steps().keySet()) {
      SortedSet<String> group = group(step);
      if (!group.isEmpty() && seen.addAll(group)) {
        circles.add(circle(group));
      }
    }
    return circles;
  }

  /** The steps that a step leads to and that lead back to it; none where it never comes back. */
  private SortedSet<String> group(String step) {
    SortedSet<String> group = new TreeSet<>();
    for (String other : ahead(step)) {
      if (ahead(other).contains(step)) {
        group.add(other);
      }
    }
    return group;
  }

  private Set<String> ahead(String step) {
    Set<String> ahead = new TreeSet<>();
    addAhead(step, ahead);
    return ahead;
  }

  private void addAhead(String step, Set<String> ahead) {
    for (Branch branch : chart.steps().get(step).branches()) {
      branch.target().next().filter(ahead::add).ifPresent(next -> addAhead(next, ahead));
    }
  }

  private Circle circle(SortedSet<String> group) {
    SortedMap<String, Integer> round = round(group);
    Optional<String> from =
        group.stream().filter(step -> round.get(step) != Diagrams.NONE).findFirst();
    return from.map(step -> walked(round, step))
        .orElseGet(() -> new Circle(path(group.first(), inside(group)), Diagrams.NONE));
  }

  private static BiPredicate<Step, Branch> inside(SortedSet<String> group) {
    return (step, branch) -> branch.target().next().filter(group::contains).isPresent();
  }

  /** For each step of a group: the situations there that never leave the group. */
  private SortedMap<String, Integer> round(SortedSet<String> group) {
    SortedMap<String, Integer> round = new TreeMap<>();
    group.forEach(step -> round.put(step, reach.at(step)));
    boolean changed = true;
    while (changed) {
      changed = false;
      for (String id : group) {
        int staying = staying(chart.steps().get(id), round);
        changed |= staying != round.put(id, staying);
      }
    }
    return round;
  }

  private int staying(Step step, SortedMap<String, Integer> round) {
    int staying = Diagrams.NONE;
    for (Branch branch : step.branches()) {
      staying = diagrams.or(staying, kept(branch, round));
    }
    return diagrams.and(staying, round.get(step.id()));
  }

  /** One circle that some of the situations go round, and all that go round this one. */
  private Circle walked(SortedMap<String, Integer> round, String from) {
    int one = one(round.get(from));
    List<Step> steps =
        path(from, (step, branch) -> diagrams.and(one, kept(branch, round)) != Diagrams.NONE);
    int all = reach.at(steps.get(0).id());
    for (int i = 0; i < steps.size(); i++) {
      all = diagrams.and(all, leading(steps.get(i), steps.get((i + 1) % steps.size()).id()));
    }
    return new Circle(steps, all);
  }

  /** What an answer leads to a step of the group and keeps in it. */
  private int kept(Branch branch, SortedMap<String, Integer> round) {
    int there =
        branch
            .target()
            .next()
            .map(next -> round.getOrDefault(next, Diagrams.NONE))
            .orElse(Diagrams.NONE);
    return diagrams.and(there, space.where(branch));
  }

  /** A single situation, apart from what tells nothing. */
  private int one(int situations) {
    int[] path = new Witness(space.space()).path(situations);
    int one = Diagrams.ALL;
    for (int axis = 0; axis < path.length; axis++) {
      BitSet cell = new BitSet();
      cell.set(path[axis]);
      one = diagrams.and(one, diagrams.literal(axis, cell));
    }
    return one;
  }

  private int leading(Step from, String to) {
    return from.branches().stream()
        .filter(branch -> branch.target().next().equals(Optional.of(to)))
        .map(space::where)
        .reduce(Diagrams.NONE, diagrams::or);
  }

  /** Goes on by the first fitting answer until a step comes again; the circle at the end. */
  private List<Step> path(String from, BiPredicate<Step, Branch> fitting) {
    LinkedHashSet<String> path = new LinkedHashSet<>();
    String at = from;
    while (path.add(at)) {
      Step step = chart.steps().get(at);
      at =
          step.branches().stream()
              .filter(branch -> fitting.test(step, branch))
              .flatMap(branch -> branch.target().next().stream())
              .findFirst()
              .orElseThrow();
    }
    List<String> walked = List.copyOf(path);
    return fromFirst(walked.subList(walked.indexOf(at), walked.size()));
  }

  /** The same circle from the step that stands first in the file. */
  private List<Step> fromFirst(List<String> circle) {
    List<Step> steps = circle.stream().map(chart.steps()::get).toList();
    int first = 0;
    for (int i = 1; i < steps.size(); i++) {
      first = steps.get(i).place().compareTo(steps.get(first).place()) < 0 ? i : first;
    }
    List<Step> turned = new ArrayList<>(steps.subList(first, steps.size()));
    turned.addAll(steps.subList(0, first));
    return turned;
  }
}
