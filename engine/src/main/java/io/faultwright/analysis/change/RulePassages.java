package io.faultwright.analysis.change;

import io.faultwright.change.Edit.Concern;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.wording.RuleText;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The parts of symptoms, rules, statements of what cannot happen, and limits. */
final class RulePassages {
  private final KnowledgeBase kb;
  private final Passages passages;
  private final Wording words;
  private final ConditionKey keys;

  RulePassages(KnowledgeBase kb, Passages passages) {
    this.kb = kb;
    this.passages = passages;
    this.words = new Wording(kb);
    this.keys = new ConditionKey(kb);
  }

  void write() {
    kb.symptoms().values().forEach(this::symptom);
    kb.nevers().values().forEach(never -> never(never.id(), never));
    kb.limits().values().forEach(this::limits);
  }

  private void symptom(Symptom symptom) {
    passages
        .thing(Concern.RULES, "symptom", symptom.id(), symptom.place())
        .rules("applies", keys.of(symptom.applies()), words.condition(symptom.applies()))
        .rules("recognise", keys.of(symptom.recognise()), words.condition(symptom.recognise()))
        .rules("first", first(symptom, true), first(symptom, false))
        .rules("together", symptom.together().toString(), together(symptom))
        .work("hazardous-checks", symptom.hazards().word())
        .text("title", symptom.title())
        .text("about", symptom.about())
        .text("guide", symptom.guide());
    symptom.rules().values().forEach(rule -> rule(symptom, rule));
    symptom.nevers().values().forEach(never -> never(symptom.id() + "/" + never.id(), never));
  }

  private String first(Symptom symptom, boolean key) {
    return symptom.first().stream()
        .map(first -> text(first.when(), key) + ", otherwise " + first.otherwise())
        .collect(Collectors.joining("\n"));
  }

  private String text(Condition condition, boolean key) {
    return key ? keys.of(condition) : words.condition(condition);
  }

  private static String together(Symptom symptom) {
    return symptom.together().stream()
        .map(pair -> pair.one() + " and " + pair.other())
        .collect(Collectors.joining("\n"));
  }

  private void rule(Symptom symptom, Rule rule) {
    String conclusion = conclusion(rule.conclusion());
    String silenced = String.join(", ", rule.insteadOf());
    passages
        .thing(Concern.RULES, "rule", symptom.id() + "/" + rule.id(), rule.place())
        .rules("when", keys.of(rule.when()), words.condition(rule.when()))
        .rules("conclusion", conclusion, conclusion)
        .rules("instead-of", silenced, silenced)
        .text("because", rule.because());
  }

  private static String conclusion(Conclusion conclusion) {
    return conclusion instanceof Conclusion.Exclude exclude
        ? "exclude: " + String.join(", ", exclude.faults())
        : conclusion.answers().stream().map(RuleText::answer).collect(Collectors.joining(", "));
  }

  private void never(String id, Never never) {
    passages
        .thing(Concern.RULES, "never", id, never.place())
        .rules("when", keys.of(never.when()), words.condition(never.when()))
        .text("because", never.because());
  }

  private void limits(LimitsTable table) {
    List<String> rows = table.rows().stream().map(row -> key(table, row)).sorted().toList();
    passages
        .thing(Concern.RULES, "limits", table.reading(), table.place())
        .rules(
            "rows", table.drivers() + " " + table.between() + rows, table.rows().size() + " rows");
  }

  private String key(LimitsTable table, Row row) {
    String at =
        IntStream.range(0, row.at().size())
            .mapToObj(i -> keys.interval(table.drivers().get(i), row.at().get(i)))
            .collect(Collectors.joining(" and "));
    return keys.of(row.builds())
        + " at "
        + at
        + " from "
        + keys.amount(table.reading(), row.low())
        + " to "
        + keys.amount(table.reading(), row.high());
  }
}
