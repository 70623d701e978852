package io.faultwright.flow;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.BuildSets;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says the limits of some equipment where they are few enough to stand in a step. */
final class LimitsWords {
  private static final int MOST_ROWS = 3;

  private final Wording wording;
  private final List<Build> builds;
  private final BuildSets sets;

  /**
   * @param builds the equipment in question
   */
  LimitsWords(KnowledgeBase knowledge, Wording wording, List<Build> builds) {
    this.wording = wording;
    this.builds = List.copyOf(builds);
    this.sets = BuildSets.byFacts(knowledge.equipment(), builds);
  }

  /** The figures, for each part of the equipment; absent where one needs the table. */
  Optional<String> figures(LimitsTable table) {
    List<LimitsTable.Row> rows =
        table.rows().stream().filter(row -> !concerned(row).isEmpty()).toList();
    boolean few = rows.size() <= MOST_ROWS && rows.stream().allMatch(row -> row.at().isEmpty());
    return few
        ? Optional.of(
            rows.stream().map(row -> row(table.reading(), row)).collect(Collectors.joining("; ")))
        : Optional.empty();
  }

  private List<Build> concerned(LimitsTable.Row row) {
    return builds.stream().filter(build -> build.satisfies(row.builds())).toList();
  }

  private String row(String reading, LimitsTable.Row row) {
    Interval within =
        new Interval(
            row.low().map(low -> new Interval.End(low, true)),
            row.high().map(high -> new Interval.End(high, true)));
    String figures = wording.interval(reading, within);
    Condition whose = sets.condition(concerned(row));
    return whose.equals(Condition.ALWAYS) ? figures : whose(whose) + " " + figures;
  }

  /** A single fact by its value alone, where that is clear. */
  private String whose(Condition condition) {
    List<Condition.Test> tests = condition.tests().toList();
    boolean clear = tests.size() == 1 && !tests.get(0).subject().equals(Equipment.SOFTWARE);
    return clear
        ? wording.pattern(tests.get(0).subject(), tests.get(0).pattern())
        : Words.lowerFirst(wording.condition(condition)).replace(": ", " ") + ":";
  }
}
