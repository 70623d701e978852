package io.faultwright.analysis.limits;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Situation;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds pairs of rows that hold for the same equipment at the same driver value. */
public final class OverlappingLimitsAnalysis {
  private OverlappingLimitsAnalysis() {}

  /** One finding per pair of rows, with the first build they meet on. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    List<Finding> findings = new ArrayList<>();
    knowledge.limits().values().forEach(table -> findings.addAll(ofTable(knowledge, table)));
    return findings;
  }

  private static List<Finding> ofTable(KnowledgeBase knowledge, LimitsTable table) {
    List<Build> builds = knowledge.equipment().builds();
    List<Row> rows = table.rows();
    List<BitSet> on = rows.stream().map(row -> on(builds, row)).toList();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      for (int j = i + 1; j < rows.size(); j++) {
        if (on.get(i).intersects(on.get(j)) && meet(table, rows.get(i), rows.get(j))) {
          Build build = builds.get(first(on.get(i), on.get(j)));
          findings.add(finding(knowledge, table, rows.get(i), rows.get(j), build));
        }
      }
    }
    return findings;
  }

  /** Positions of the builds that a row holds for. */
  private static BitSet on(List<Build> builds, Row row) {
    BitSet on = new BitSet(builds.size());
    for (int i = 0; i < builds.size(); i++) {
      on.set(i, builds.get(i).satisfies(row.builds()));
    }
    return on;
  }

  private static int first(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.and(other);
    return both.nextSetBit(0);
  }

  private static boolean meet(LimitsTable table, Row one, Row other) {
    return IntStream.range(0, Math.min(one.at().size(), other.at().size()))
        .allMatch(driver -> meet(table, one.at().get(driver), other.at().get(driver)));
  }

  private static boolean meet(LimitsTable table, Interval a, Interval b) {
    int startAgainstEnd = start(a).compareTo(end(b));
    int endAgainstStart = end(a).compareTo(start(b));
    boolean sameStart = start(a).compareTo(start(b)) == 0;
    return table.between().equals(Optional.of(Between.STEP))
        ? sameStart || startAgainstEnd < 0 && endAgainstStart > 0
        : sameStart;
  }

  private static BigFraction start(Interval interval) {
    return interval.low().orElseThrow().value();
  }

  private static BigFraction end(Interval interval) {
    return interval.high().orElseThrow().value();
  }

  private static Finding finding(
      KnowledgeBase knowledge, LimitsTable table, Row one, Row other, Build build) {
    TreeMap<String, String> equipment = new TreeMap<>();
    equipment.put(Equipment.MODEL, build.model().id());
    build.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    return Finding.of(
            FindingKind.OVERLAPPING_LIMITS,
            List.of(one.place(), other.place()),
            "two rows of the limits of `" + table.reading() + "` hold at once",
            "keep one of them, or tell them apart by a column of `by`")
        .shownBy(
            new Situation(equipment, new TreeMap<>()),
            region(knowledge, table, one, other),
            Optional.empty());
  }

  /** Where on the drivers both rows hold. */
  private static List<RegionTest> region(
      KnowledgeBase knowledge, LimitsTable table, Row one, Row other) {
    return IntStream.range(0, Math.min(one.at().size(), other.at().size()))
        .mapToObj(
            i ->
                new RegionTest(
                    table.drivers().get(i),
                    stretch(knowledge, table.drivers().get(i), one.at().get(i), other.at().get(i))))
        .toList();
  }

  private static String stretch(KnowledgeBase knowledge, String driver, Interval a, Interval b) {
    BigFraction from = start(a).compareTo(start(b)) > 0 ? start(a) : start(b);
    BigFraction to = end(a).compareTo(end(b)) < 0 ? end(a) : end(b);
    String unit =
        knowledge
            .readings()
            .get(driver)
            .domain()
            .match(measured -> " " + measured.unit().symbol(), choice -> "");
    String start = from.compareTo(to) == 0 ? "" : Decimals.show(from) + " to ";
    return start + Decimals.show(to) + unit;
  }
}
