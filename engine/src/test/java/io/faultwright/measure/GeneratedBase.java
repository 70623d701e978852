package io.faultwright.measure;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;

import io.faultwright.measure.GeneratedRules.Rule;
import io.faultwright.measure.GeneratedRules.Sample;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Situation;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.SymptomBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Generated rules and samples as a knowledge base and situations. */
final class GeneratedBase {
  private GeneratedBase() {}

  /** The rules dealt to so many symptoms, in turn, each with a fault of its own. */
  static KnowledgeBase of(GeneratedRules generated, int symptoms) {
    KnowledgeBaseBuilder base = new KnowledgeBaseBuilder().model("FL-1", "fell", Map.of(), "1.0");
    for (int column = 0; column < GeneratedRules.CHOICES; column++) {
      base.choice("choice-" + column, GeneratedRules.VALUES.toArray(String[]::new));
    }
    for (int column = 0; column < GeneratedRules.QUANTITIES; column++) {
      base.measured("quantity-" + column, "K", "0", "100");
    }
    for (int number = 0; number < symptoms; number++) {
      base.symptom(symptomOf(generated, number, symptoms));
    }
    return base.build();
  }

  private static SymptomBuilder symptomOf(GeneratedRules generated, int number, int symptoms) {
    SymptomBuilder symptom = symptom("symptom-" + number);
    for (int i = number; i < generated.rules().size(); i += symptoms) {
      Rule rule = generated.rules().get(i);
      symptom.concludes(rule.name(), when(rule), "fault-of-" + rule.name());
    }
    return symptom;
  }

  private static Condition when(Rule rule) {
    List<Condition> parts = new ArrayList<>();
    rule.choices().forEach((column, value) -> parts.add(is("choice-" + column, value)));
    rule.above().forEach((column, value) -> parts.add(above("quantity-" + column, "" + value)));
    return new Condition.All(parts);
  }

  static Situation situationOf(Sample sample) {
    SituationBuilder situation = situation().equipment("model", "FL-1");
    for (int column = 0; column < GeneratedRules.CHOICES; column++) {
      situation.word("choice-" + column, sample.choices().get(column));
    }
    for (int column = 0; column < GeneratedRules.QUANTITIES; column++) {
      situation.amount("quantity-" + column, "" + sample.quantities().get(column));
    }
    return situation.build();
  }
}
