package io.faultwright.analysis.change;

import io.faultwright.change.Edit.Concern;
import io.faultwright.model.Access;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.Equipment;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.quantity.Decimals;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;

/** The parts of the title page and of the equipment. */
final class EquipmentPassages {
  private final KnowledgeBase kb;
  private final Passages passages;

  EquipmentPassages(KnowledgeBase kb, Passages passages) {
    this.kb = kb;
    this.passages = passages;
  }

  void write() {
    handbook(kb.handbook());
    Equipment equipment = kb.equipment();
    equipment
        .families()
        .values()
        .forEach(
            family ->
                passages
                    .thing(Concern.TEXT, "family", family.id(), family.place())
                    .text("title", family.title())
                    .text("about", family.about()));
    equipment.options().values().forEach(this::option);
    equipment.models().values().forEach(this::model);
  }

  private void handbook(Handbook handbook) {
    passages
        .thing(Concern.TEXT, "handbook", "", handbook.place())
        .text("title", handbook.title())
        .text("maker", handbook.maker())
        .text("revision", handbook.revision())
        .text("date", handbook.date())
        .text("language", handbook.language())
        .text("disclaimer", handbook.disclaimer())
        .text("hotline", handbook.hotline())
        .text("base", handbook.base())
        .text("start", handbook.start())
        .text("notes", String.join("\n", handbook.notes()))
        .text("access-weights", weights(handbook.weights()))
        .text("nameplate", kb.equipment().nameplate().map(Object::toString).orElse(""));
  }

  private static String weights(AccessWeights weights) {
    return Arrays.stream(Access.values())
        .map(access -> access.word() + " " + Decimals.show(weights.of(access)))
        .collect(Collectors.joining("\n"));
  }

  private void option(Option option) {
    passages
        .thing(Concern.TEXT, "option", option.id(), option.place())
        .text("title", option.title())
        .text(
            "values",
            option.values().stream()
                .sorted(Comparator.comparing(NamedValue::id))
                .map(value -> value.id() + ": " + value.title())
                .collect(Collectors.joining("\n")));
  }

  private void model(Model model) {
    String facts = model.family() + "\n" + lines(model.options());
    passages
        .thing(Concern.RULES, "model", model.id(), model.place())
        .rules("family and options", facts, facts)
        .text("title", model.title())
        .text("data", lines(model.data()));
  }

  private static String lines(Map<String, String> entries) {
    return entries.entrySet().stream()
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(Collectors.joining("\n"));
  }
}
