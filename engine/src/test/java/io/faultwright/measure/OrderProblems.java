package io.faultwright.measure;

import io.faultwright.sequence.Check;
import io.faultwright.sequence.Outlay;
import io.faultwright.sequence.Problem;
import io.faultwright.sequence.TableOfTests;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

/**
 * Seeded problems of the shape that handbooks have: each fault shows its own answers, readings have
 * two or more answers and take one to ten minutes; a third are taken with gauges that are connected
 * once, a third at live parts, and these come last if so asked.
 */
public final class OrderProblems {
  private static final int[] WEIGHTS = {1, 3, 4};
  private static final double GAUGES = 5;

  private final Random random;

  public OrderProblems(long seed) {
    this.random = new Random(seed);
  }

  /**
   * A problem of so many readings that tell so many faults apart.
   *
   * @param most answers that a reading has, two at least
   * @param anywhere whether checks at live parts and with gauges may come before others
   */
  public Problem problem(int readings, int faults, int most, boolean anywhere) {
    int[] kinds = random.ints(readings, 2, most + 1).toArray();
    int[][] answers = distinct(faults, kinds);
    double[] frequencies = random.ints(faults, 1, 11).asDoubleStream().toArray();
    List<Outlay> outlays = new ArrayList<>();
    List<Check> checks = new ArrayList<>();
    for (int reading = 0; reading < readings; reading++) {
      int access = reading % 3;
      double minutes = random.nextInt(1, 11);
      outlays.add(new Outlay(minutes, minutes * WEIGHTS[access]));
      BitSet pays = new BitSet();
      pays.set(reading);
      pays.set(readings, access == 2);
      checks.add(new Check(pays, new BitSet(), access > 0 && !anywhere));
    }
    outlays.add(new Outlay(GAUGES, GAUGES * WEIGHTS[2]));
    return new Problem(TableOfTests.telling(frequencies, answers), outlays, checks);
  }

  private int[][] distinct(int faults, int[] kinds) {
    List<List<Integer>> rows = new ArrayList<>();
    while (rows.size() < faults) {
      List<Integer> row = new ArrayList<>();
      for (int kind : kinds) {
        row.add(random.nextInt(kind));
      }
      if (!rows.contains(row)) {
        rows.add(row);
      }
    }
    return rows.stream()
        .map(row -> row.stream().mapToInt(answer -> answer).toArray())
        .toArray(int[][]::new);
  }
}
