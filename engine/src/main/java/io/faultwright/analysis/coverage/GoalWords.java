package io.faultwright.analysis.coverage;

import io.faultwright.analysis.coverage.Threshold.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Value;
import io.faultwright.wording.RuleText;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Goals in a few words. */
final class GoalWords {
  private final RuleText text;

  GoalWords(KnowledgeBase kb) {
    this.text = new RuleText(kb);
  }

  String test(Test test) {
    return "`" + test.subject() + ": " + text.pattern(test.subject(), test.pattern()) + "`";
  }

  /** A value beside a threshold. */
  String threshold(String reading, Threshold threshold, Side side) {
    return "`"
        + reading
        + "` "
        + beside(threshold, side)
        + " "
        + text.value(reading, new Value.Number(threshold.value()));
  }

  /** A value beside a limit, and where the row with that limit stands. */
  String limit(LimitsTable table, LimitsTable.Row row, boolean low, Threshold at, Side side) {
    return "`"
        + table.reading()
        + "` "
        + beside(at, side)
        + " its "
        + (low ? "low" : "high")
        + " limit of "
        + text.value(table.reading(), new Value.Number(at.value()))
        + drivers(table, row);
  }

  private String drivers(LimitsTable table, LimitsTable.Row row) {
    return IntStream.range(0, row.at().size())
        .mapToObj(
            i ->
                " with `"
                    + table.drivers().get(i)
                    + ": "
                    + text.interval(table.drivers().get(i), row.at().get(i))
                    + "`")
        .collect(Collectors.joining());
  }

  private static String beside(Threshold threshold, Side side) {
    if (side == Side.AT) {
      return "at";
    }
    if (side == Side.BELOW) {
      return threshold.above() ? "just below" : "just up to";
    }
    return threshold.above() ? "just from" : "just above";
  }
}
