package io.faultwright.analysis.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.order.Decisions.Arm;
import io.faultwright.analysis.order.Decisions.Asked;
import io.faultwright.analysis.order.Decisions.Told;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.random.Priced;
import io.faultwright.analysis.random.RandomKnowledge;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.sequence.EveryOrder;
import io.faultwright.sequence.Patience;
import io.faultwright.sequence.Problem;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Orders of checks and groups of machines of random knowledge bases against brute force: every
 * order is tried, every combination of cells is looked at, every division of machines into groups.
 */
class RandomChecksTest {
  private static final int COUNT = Integer.getInteger("random.checks", 300);

  /** With more questions than this, trying every order takes too long. */
  private static final int MOST_TRIED = 6;

  private record Shown(int charts, int tried, int split) {
    Shown plus(Shown other) {
      return new Shown(charts + other.charts, tried + other.tried, split + other.split);
    }
  }

  @Test
  void everyOrderEqualsBruteForce() {
    Shown shown =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(RandomChecksTest::compare)
            .reduce(new Shown(0, 0, 0), Shown::plus);
    assertTrue(shown.charts > COUNT / 2, "charts: " + shown);
    assertTrue(shown.tried > COUNT / 4, "of which every order was tried: " + shown);
    assertTrue(shown.split > COUNT / 16, "with more than one group of machines: " + shown);
  }

  private static Shown compare(long seed) {
    KnowledgeBase knowledge = Priced.of(RandomKnowledge.of(seed), new Random(seed));
    SymptomSpace space =
        SymptomSpace.of(knowledge, knowledge.symptoms().get(RandomKnowledge.SYMPTOM));
    if (space.possible() == Diagrams.NONE) {
      return new Shown(0, 0, 0);
    }
    List<Result> results = Results.of(space);
    List<BitSet> groups = Scopes.of(space, results);
    assertEquals(new Machines(space, results).fewest(), groups.size(), () -> "seed " + seed);
    int tried = 0;
    for (BitSet group : groups) {
      tried += compare(space, results, group, seed) ? 1 : 0;
    }
    return new Shown(groups.size(), tried, groups.size() > 1 ? 1 : 0);
  }

  private static boolean compare(
      SymptomSpace space, List<Result> results, BitSet group, long seed) {
    Diagrams diagrams = space.space().diagrams();
    int all = diagrams.and(space.possible(), diagrams.literal(0, group));
    List<Question> questions =
        Questions.of(space).stream().filter(question -> question.axis() != 0).toList();
    CheckOrder order = new CheckOrder(space, results, questions, all, Patience.of(50_000));
    List<Integer> ends = new ArrayList<>();
    follow(order, diagrams, order.root(), all, ends);
    assertEquals(all, ends.stream().reduce(Diagrams.NONE, diagrams::or), () -> "seed " + seed);
    if (questions.size() > MOST_TRIED) {
      return false;
    }
    Prices prices = new Prices(space, questions);
    double least =
        new EveryOrder(
                new Problem(
                    new SymptomSituations(space, results, questions, all),
                    prices.outlays(),
                    prices.checks()))
            .least();
    assertEquals(least, order.cost().atLeast(), 1e-6 * Math.max(1, least), () -> "seed " + seed);
    assertTrue(order.cost().weighted() >= least - 1e-6, () -> "seed " + seed);
    return true;
  }

  /** Every path ends at what the rules say of all its situations. */
  private static void follow(
      CheckOrder order, Diagrams diagrams, int number, int situations, List<Integer> ends) {
    if (order.decisions().get(number) instanceof Told told) {
      assertTrue(diagrams.within(situations, told.result().situations()));
      ends.add(situations);
      return;
    }
    Asked asked = (Asked) order.decisions().get(number);
    for (Arm arm : asked.arms()) {
      BitSet cells = asked.question().cells(arm.options());
      int part = diagrams.and(situations, diagrams.literal(asked.question().axis(), cells));
      if (part != Diagrams.NONE) {
        follow(order, diagrams, arm.next(), part, ends);
      }
    }
  }

  /** The machines of a space, and how few groups they can be put into. */
  private static final class Machines {
    private final SymptomSpace space;
    private final Diagrams diagrams;
    private final int[] cells;
    private final List<List<Integer>> told = new ArrayList<>();

    Machines(SymptomSpace space, List<Result> results) {
      this.space = space;
      this.diagrams = space.space().diagrams();
      this.cells =
          IntStream.range(0, diagrams.size(0))
              .filter(cell -> diagrams.child(space.possible(), 0, cell) != Diagrams.NONE)
              .toArray();
      for (int cell : cells) {
        List<Integer> shown = new ArrayList<>();
        collect(1, results.stream().mapToInt(r -> child(r, cell)).toArray(), shown);
        told.add(shown);
      }
    }

    private int child(Result result, int cell) {
      return diagrams.child(result.situations(), 0, cell);
    }

    /** For each combination of readings, which result it shows; -1 where it cannot be. */
    private void collect(int axis, int[] sets, List<Integer> into) {
      if (axis == diagrams.axes()) {
        int shown = -1;
        for (int i = 0; i < sets.length; i++) {
          shown = sets[i] == Diagrams.NONE ? shown : i;
        }
        into.add(shown);
        return;
      }
      List<Integer> groups = space.space().axes().get(axis).groups();
      int deeper = axis;
      for (int group : new TreeSet<>(groups)) {
        int[] next = IntStream.of(sets).map(set -> any(set, deeper, groups, group)).toArray();
        collect(axis + 1, next, into);
      }
    }

    /** What is left once an axis lies in some cell of a group that no condition tells apart. */
    private int any(int set, int axis, List<Integer> groups, int group) {
      return IntStream.range(0, groups.size())
          .filter(cell -> groups.get(cell) == group)
          .map(cell -> diagrams.child(set, axis, cell))
          .reduce(Diagrams.NONE, diagrams::or);
    }

    int fewest() {
      return fewest(0, new ArrayList<>());
    }

    private int fewest(int next, List<List<Integer>> groups) {
      if (next == cells.length) {
        return groups.size();
      }
      int least = Integer.MAX_VALUE;
      for (int i = 0; i <= groups.size(); i++) {
        List<List<Integer>> more = new ArrayList<>();
        groups.forEach(group -> more.add(new ArrayList<>(group)));
        if (i == groups.size()) {
          more.add(new ArrayList<>());
        }
        if (more.get(i).stream().allMatch(other -> fit(next, other))) {
          more.get(i).add(next);
          least = Math.min(least, fewest(next + 1, more));
        }
      }
      return least;
    }

    private boolean fit(int one, int other) {
      return IntStream.range(0, told.get(one).size())
          .allMatch(
              i -> {
                int here = told.get(one).get(i);
                int there = told.get(other).get(i);
                return here < 0 || there < 0 || here == there;
              });
    }
  }
}
