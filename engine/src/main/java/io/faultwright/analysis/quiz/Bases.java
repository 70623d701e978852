package io.faultwright.analysis.quiz;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.quiz.ChartPath.Stop;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Access;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds situations of which an item can be made. */
final class Bases {
  /** So often out of a hundred a reading is shown that tells nothing. */
  private static final int IDLE = 35;

  private static final int TRIES = 3;

  private final Ground ground;
  private final ChartPath path;
  private final Figures figures;
  private final Witness witness;

  Bases(Ground ground, ChartPath path) {
    this.ground = ground;
    this.path = path;
    this.figures = new Figures(ground);
    this.witness = new Witness(ground.space());
  }

  Figures figures() {
    return figures;
  }

  /**
   * A situation of a set.
   *
   * @param region possible situations in all of which the result is told
   * @param usual whether it is the most ordinary one
   * @return empty where none was found that can be shown without doubt, or nothing has to be shown
   */
  Optional<Basis> in(int region, Result result, Build build, boolean usual, Dice dice) {
    for (int tries = 0; tries < TRIES; tries++) {
      int one = usual && tries == 0 ? region : drawn(region, dice);
      Situation full = Ground.on(build, witness.of(one));
      Optional<Basis> basis = of(full, result, build, dice);
      if (basis.isPresent()) {
        return basis;
      }
    }
    return Optional.empty();
  }

  private Optional<Basis> of(Situation full, Result result, Build build, Dice dice) {
    List<String> asked = asked(build, full);
    if (ground.proved(Ground.showing(full, asked)).filter(result::equals).isEmpty()) {
      return Optional.empty();
    }
    List<String> needed = necessary(full, asked, result);
    if (needed.isEmpty()) {
      return Optional.empty();
    }
    List<String> order = dice.in100(IDLE) ? withIdle(full, needed, build, dice) : needed;
    return figures
        .vary(full, order, dice)
        .filter(varied -> says(varied, order, result))
        .map(varied -> new Basis(build, varied, needed, order, result));
  }

  /** Whether what is shown proves the result, and the rules tell it of what is shown already. */
  boolean says(Situation varied, List<String> order, Result result) {
    Situation shown = Ground.showing(varied, order);
    return ground.proved(shown).filter(result::equals).isPresent()
        && ground.ruling(shown).answers().equals(result.answers())
        && ground.ruling(varied).answers().equals(result.answers());
  }

  /** The readings that the chart asks for, in its order; all there are where there is no chart. */
  List<String> asked(Build build, Situation full) {
    List<Stop> stops = path.of(build, ground.cells(full));
    Set<String> asked = new LinkedHashSet<>();
    stops.forEach(stop -> asked.addAll(stop.takes()));
    if (stops.isEmpty()) {
      asked.addAll(full.readings().keySet());
    }
    asked.retainAll(full.readings().keySet());
    return List.copyOf(asked);
  }

  /** Without every reading that the proof can do without, the last ones first. */
  private List<String> necessary(Situation full, List<String> asked, Result result) {
    List<String> needed = new ArrayList<>(asked);
    for (int i = needed.size() - 1; i >= 0; i--) {
      List<String> fewer = new ArrayList<>(needed);
      fewer.remove(i);
      if (says(full, fewer, result)) {
        needed.remove(i);
      }
    }
    return needed;
  }

  /** With a reading more that is as it should be and easy to take. */
  private List<String> withIdle(Situation full, List<String> needed, Build build, Dice dice) {
    List<String> idle =
        full.readings().keySet().stream()
            .filter(reading -> !needed.contains(reading))
            .filter(reading -> ground.has(build, reading))
            .filter(reading -> isNormal(full, needed, ground.kb().readings().get(reading)))
            .toList();
    List<String> order = new ArrayList<>(needed);
    if (!idle.isEmpty() && !needed.isEmpty()) {
      order.add(1 + dice.below(needed.size()), dice.one(idle));
    }
    return order;
  }

  private boolean isNormal(Situation full, List<String> needed, Reading reading) {
    if (reading.access() == Access.REFRIGERANT_CIRCUIT
        || ground.symptom().recognise().tests().anyMatch(t -> t.subject().equals(reading.id()))) {
      return false;
    }
    if (full.readings().get(reading.id()) instanceof Value.Word word) {
      return reading.normal().contains(word.id());
    }
    return isWithin(full, needed, reading.id());
  }

  private boolean isWithin(Situation full, List<String> needed, String reading) {
    Optional<Integer> axis = ground.space().position(new Axis.OfSide(reading));
    if (axis.isEmpty()) {
      return false;
    }
    Set<String> known = new LinkedHashSet<>(needed);
    known.add(reading);
    int cell = ground.cells(full)[axis.get()];
    return known.containsAll(ground.needs(axis.get()))
        && cell >= 0
        && ground.space().axes().get(axis.get()).cells().get(cell) instanceof Cell.SideOf side
        && side.side() == Side.WITHIN;
  }

  /** The situations of one combination of cells; each axis is ordinary as often as not. */
  private int drawn(int region, Dice dice) {
    Space space = ground.space();
    Diagrams diagrams = ground.diagrams();
    int[] usual = witness.path(region);
    int rest = region;
    BitSet[] box = new BitSet[space.axes().size()];
    for (int axis = 0; axis < box.length; axis++) {
      int below = rest;
      int level = axis;
      List<Integer> open =
          IntStream.range(0, space.axes().get(axis).cells().size())
              .filter(cell -> diagrams.child(below, level, cell) != Diagrams.NONE)
              .boxed()
              .toList();
      int cell = open.contains(usual[axis]) && dice.in100(50) ? usual[axis] : dice.one(open);
      box[axis] = new BitSet();
      box[axis].set(cell);
      rest = diagrams.child(rest, axis, cell);
    }
    return diagrams.and(region, diagrams.box(box));
  }
}
