package io.faultwright.report;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.wording.RuleText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A situation as a case's {@code given} would say it: ids, and values with their units. */
final class SituationText {
  private final RuleText ruleText;
  private final boolean oneBuild;

  SituationText(KnowledgeBase kb) {
    this.ruleText = new RuleText(kb);
    this.oneBuild = kb.equipment().builds().size() == 1;
  }

  /** Equipment facts, then readings; both by id. */
  Map<String, String> entries(Situation situation) {
    Map<String, String> entries = new LinkedHashMap<>(situation.equipment());
    situation
        .readings()
        .forEach((reading, value) -> entries.put(reading, ruleText.value(reading, value)));
    return entries;
  }

  /** The same for people, without the equipment where there is only one. */
  List<String> lines(Situation situation) {
    return entries(situation).entrySet().stream()
        .filter(entry -> !oneBuild || !situation.equipment().containsKey(entry.getKey()))
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .toList();
  }
}
