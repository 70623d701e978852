package io.faultwright.flow;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Equipment;
import io.faultwright.model.LimitsTable;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says the limits of some equipment where they are few enough to stand in a step. */
final class LimitsWords {
  private static final int MOST_ROWS = 3;

  private final Wording wording;
  private final List<Build> builds;

  /**
   * @param builds the equipment in question
   */
  LimitsWords(Wording wording, List<Build> builds) {
    this.wording = wording;
    this.builds = List.copyOf(builds);
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
    List<Condition> needed = needed(row);
    return needed.isEmpty() ? figures : whose(needed) + " " + figures;
  }

  /** Of the facts that the row names, those that it takes to tell its machines from the others. */
  private List<Condition> needed(LimitsTable.Row row) {
    List<Condition> needed = new ArrayList<>(facts(row.builds()));
    for (Condition fact : List.copyOf(needed)) {
      List<Condition> others = new ArrayList<>(needed);
      others.remove(fact);
      Condition without = new Condition.All(others);
      if (concerned(row).equals(builds.stream().filter(b -> b.satisfies(without)).toList())) {
        needed.remove(fact);
      }
    }
    return needed;
  }

  private static List<Condition> facts(Condition builds) {
    return builds instanceof Condition.All all ? all.parts() : List.of(builds);
  }

  /** A single fact by its value alone, where that is clear. */
  private String whose(List<Condition> facts) {
    boolean clear =
        facts.size() == 1
            && facts.get(0) instanceof Condition.Test test
            && !test.subject().equals(Equipment.SOFTWARE);
    return clear
        ? value((Condition.Test) facts.get(0))
        : wording.say().inLine(wording.condition(new Condition.All(facts))).replace(": ", " ")
            + ":";
  }

  private String value(Condition.Test test) {
    return wording.pattern(test.subject(), test.pattern());
  }
}
