package io.faultwright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The regions of a gap are never more than plain box subtraction leaves, and hold as much. */
class FewRegionsTest {
  @Test
  void partitionsWithHolesAndOverlaps() {
    for (int seed = 1; seed <= 60; seed++) {
      Defects defects = new Defects(seed);
      List<Column> columns = Columns.mixed(3 + seed % 6);
      Table clean = PartitionTable.withMixedEnds(columns, 20 + 2 * seed, 9, seed);
      compare(defects.widened(defects.without(clean, 1 + seed % 9), seed % 5));
    }
  }

  @Test
  void wideTables() {
    for (int seed = 1; seed <= 40; seed++) {
      compare(WideTable.of(Columns.choices(4 + seed % 4, 3), 5 + seed % 20, 2, seed));
    }
  }

  private static void compare(Table table) {
    List<Finding> gaps = GapAnalysis.findings(TableBase.space(table));
    List<List<Part>> plain = BoxSubtraction.gaps(table);
    assertTrue(gaps.size() <= plain.size(), () -> gaps.size() + " regions, not " + plain.size());
    assertEquals(
        new Boxes(table, plain).cells(),
        new Boxes(table, OurJudgement.of(table, gaps, List.of()).gaps()).cells());
  }
}
