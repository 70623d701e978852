package io.faultwright.analysis.order;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The fewest groups of builds such that one chart, which does not ask for the machine, is right for
 * all of a group. Two builds fit together if no readings that both can show mean different results;
 * builds that fit pairwise fit together. The groups are proved to be as few as possible.
 */
public final class Scopes {
  private final Space space;
  private final Diagrams diagrams;
  private final List<Result> results;
  private final BitSet[] misfits;
  private final int[] cells;

  private Scopes(SymptomSpace symptom, List<Result> results) {
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.results = results;
    this.cells =
        symptom.possible() == Diagrams.NONE
            ? new int[0]
            : diagrams.occurring(symptom.possible())[0].stream().toArray();
    this.misfits = misfits();
  }

  /** The groups, each as cells of the first axis, which is the equipment. */
  public static List<BitSet> of(SymptomSpace symptom, List<Result> results) {
    Scopes scopes = new Scopes(symptom, results);
    return new Grouping(scopes.misfits).fewest().stream().map(scopes::cells).toList();
  }

  private BitSet cells(BitSet positions) {
    BitSet chosen = new BitSet();
    positions.stream().forEach(position -> chosen.set(cells[position]));
    return chosen;
  }

  private BitSet[] misfits() {
    List<int[]> shown = new ArrayList<>();
    for (int cell : cells) {
      shown.add(shown(cell));
    }
    BitSet[] all = new BitSet[cells.length];
    for (int one = 0; one < cells.length; one++) {
      int here = one;
      all[one] = new BitSet();
      IntStream.range(0, cells.length)
          .filter(other -> differ(shown.get(here), shown.get(other)))
          .forEach(all[one]::set);
    }
    return all;
  }

  /** For each result, the readings that show it on some builds. */
  private int[] shown(int cell) {
    BitSet one = new BitSet();
    one.set(cell);
    BitSet readings = new BitSet();
    readings.set(1, diagrams.axes());
    int builds = diagrams.literal(0, one);
    return results.stream()
        .mapToInt(result -> diagrams.keep(answered(builds, result), readings))
        .toArray();
  }

  /** Some builds with the answers that show a result: what no question tells apart is one. */
  private int answered(int builds, Result result) {
    return space.coarse(diagrams.and(builds, result.situations()));
  }

  private boolean differ(int[] one, int[] other) {
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; j < other.length; j++) {
        if (i != j && diagrams.and(one[i], other[j]) != Diagrams.NONE) {
          return true;
        }
      }
    }
    return false;
  }
}
