package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Which combinations of cells of a group hold a real point: a walk over its axes in the order of
 * the levels, which turns back where the inequalities gathered so far have no solution.
 */
final class CouplingDiagram {
  private final Space space;
  private final Diagrams diagrams;
  private final Coupling coupling;
  private final SortedSet<String> judged;
  private final int start;

  /**
   * @param judged the readings of the group whose place against their limits matters
   * @param start what is left of the group's combinations by other reasons
   */
  CouplingDiagram(Space space, Coupling coupling, SortedSet<String> judged, int start) {
    this.space = space;
    this.diagrams = space.diagrams();
    this.coupling = coupling;
    this.judged = judged;
    this.start = start;
  }

  /** What builds have to share for their combinations to be the same. */
  private record Kind(int start, List<List<Row>> rows, Optional<String> refrigerant) {}

  /** The combinations. */
  int diagram() {
    return diagram(solutions -> {});
  }

  /**
   * Where a reading of the group has to be cut so that each combination has all of a cell or none.
   */
  SortedSet<Cut> cuts(String reading) {
    SortedSet<Cut> cuts = new TreeSet<>();
    LinearForm form = coupling.form(reading);
    diagram(
        solutions ->
            solutions
                .parts()
                .forEach(part -> part.image(form).ifPresent(all -> cuts.addAll(Cut.of(all)))));
    return cuts;
  }

  private int diagram(Consumer<Solutions> met) {
    Map<Kind, BitSet> cellsByKind = new LinkedHashMap<>();
    List<Cell> cells = space.axis(new Axis.OfEquipment()).cells();
    for (int cell = 0; cell < cells.size(); cell++) {
      Kind kind = kind(cell, build(cell));
      cellsByKind.computeIfAbsent(kind, key -> new BitSet()).set(cell);
    }
    int all = Diagrams.NONE;
    for (Map.Entry<Kind, BitSet> entry : cellsByKind.entrySet()) {
      Walk walk = new Walk(build(entry.getValue().nextSetBit(0)), met);
      int here = space.literal(new Axis.OfEquipment(), entry.getValue());
      all = diagrams.or(all, diagrams.and(here, walk.from(entry.getKey().start())));
    }
    return all;
  }

  private Build build(int cell) {
    return ((Cell.Builds) space.axis(new Axis.OfEquipment()).cells().get(cell)).representative();
  }

  private Kind kind(int cell, Build build) {
    return new Kind(
        diagrams.child(start, 0, cell),
        judged.stream().map(reading -> space.curve(reading, build).rows()).toList(),
        build.model().refrigerant().filter(one -> coupling.needsRefrigerant()));
  }

  /** The walk for one build. */
  private final class Walk {
    private final Build build;
    private final Consumer<Solutions> met;
    private final int[] path = new int[space.axes().size()];

    Walk(Build build, Consumer<Solutions> met) {
      this.build = build;
      this.met = met;
    }

    int from(int start) {
      return down(0, start, coupling.ranges());
    }

    private int down(int depth, int left, Solutions solutions) {
      if (depth == coupling.positions().size()) {
        return met(left, solutions);
      }
      int position = coupling.positions().get(depth);
      Optional<Interval> image = image(position, solutions);
      int all = Diagrams.NONE;
      for (int cell = 0; cell < diagrams.size(position); cell++) {
        int rest = diagrams.child(left, position, cell);
        if (rest != Diagrams.NONE && mayMeet(image, position, cell)) {
          path[position] = cell;
          int below = into(depth, rest, coupling.with(solutions, build, path, position));
          all = diagrams.or(all, diagrams.and(literal(position, cell), below));
        }
      }
      return all;
    }

    private int met(int left, Solutions solutions) {
      Solutions all = coupling.beyondCurves(solutions, build, path);
      if (all != solutions && all.solvable().isEmpty()) {
        return Diagrams.NONE;
      }
      met.accept(all);
      return left;
    }

    /** Down into a cell, where it is only now seen whether it leaves a solution. */
    private int into(int depth, int left, Solutions solutions) {
      Solutions some = solutions.solvable();
      return some.isEmpty() ? Diagrams.NONE : down(depth + 1, left, some);
    }

    private Optional<Interval> image(int position, Solutions solutions) {
      return space.axes().get(position).subject() instanceof Axis.OfReading of
          ? solutions.image(coupling.form(of.reading()))
          : Optional.empty();
    }

    private boolean mayMeet(Optional<Interval> image, int position, int cell) {
      return image.isEmpty()
          || !(space.axes().get(position).cells().get(cell) instanceof Cell.Stretch stretch)
          || Stretches.intersection(image.get(), stretch.interval()).isPresent();
    }

    private int literal(int position, int cell) {
      BitSet one = new BitSet();
      one.set(cell);
      return diagrams.literal(position, one);
    }
  }
}
