package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.model.Derived;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A situation as a case's {@code given} would say it: ids, and values with their units. */
final class SituationText {
  private final RuleText ruleText;
  private final KnowledgeBase kb;
  private final DerivedValues derived;
  private final boolean oneBuild;

  SituationText(KnowledgeBase kb) {
    this.kb = kb;
    this.ruleText = new RuleText(kb);
    this.derived = new DerivedValues(kb);
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

  /** A member of an object with the entries of a situation. */
  void write(JsonGenerator json, String field, Situation situation) throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<String, String> entry : entries(situation).entrySet()) {
      json.writeStringField(entry.getKey(), entry.getValue());
    }
    json.writeEndObject();
  }

  /**
   * The derived readings that follow from a situation, which its case would not give; not those
   * that only repeat another reading.
   */
  Map<String, String> derived(Situation situation) {
    Map<String, String> entries = new LinkedHashMap<>();
    derived
        .of(situation)
        .forEach((reading, value) -> entries.put(reading, ruleText.value(reading, value)));
    entries.keySet().removeIf(this::repeatsAnother);
    return entries;
  }

  private boolean repeatsAnother(String reading) {
    return kb.readings().get(reading).derived().filter(Derived::isSame).isPresent();
  }

  /**
   * The same for people, with what follows from it, without the equipment where there is only one.
   */
  List<String> lines(Situation situation) {
    Stream<String> given =
        entries(situation).entrySet().stream()
            .filter(entry -> !oneBuild || !situation.equipment().containsKey(entry.getKey()))
            .map(entry -> entry.getKey() + ": " + entry.getValue());
    Stream<String> computed =
        derived(situation).entrySet().stream()
            .map(entry -> entry.getKey() + ": " + entry.getValue() + " (computed)");
    return Stream.concat(given, computed).toList();
  }
}
