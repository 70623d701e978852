package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Open;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Verdict;
import io.faultwright.wording.RuleText;
import java.io.IOException;

/** What a case leaves open, and what to read next, for machines; a contract. */
public final class ProspectJson {
  private final String handbook;
  private final SituationText situations;
  private final StepCautions cautions;

  public ProspectJson(KnowledgeBase kb) {
    this.handbook = kb.handbook().title();
    this.situations = new SituationText(kb);
    this.cautions = new StepCautions(kb);
  }

  /**
   * The prospect.
   *
   * @param verdict what the rules say of the case as it is
   */
  public String write(Prospect prospect, Verdict verdict) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", handbook);
          json.writeStringField("case", prospect.recorded());
          json.writeStringField("symptom", prospect.symptom());
          json.writeStringField("status", verdict.status().word());
          open(json, prospect);
          Json.strings(json, "ruledOut", prospect.ruledOut());
          json.writeArrayFieldStart("next");
          for (Step step : prospect.steps()) {
            json.writeStartObject();
            step(json, step);
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private void open(JsonGenerator json, Prospect prospect) throws IOException {
    json.writeArrayFieldStart("stillPossible");
    for (Open open : prospect.open()) {
      json.writeStartObject();
      Json.strings(json, "answers", open.answers().stream().map(RuleText::answer).toList());
      json.writeNumberField("likelihood", open.likelihood());
      situations.write(json, "example", open.example());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void step(JsonGenerator json, Step step) throws IOException {
    json.writeStringField("reading", step.reading());
    Takings.members(json, step.taking());
    Json.strings(json, "cautions", cautions.ids(step.taking()));
    json.writeNumberField("bits", step.bits());
    json.writeNumberField("decides", step.decides());
    json.writeFieldName("expected");
    if (step.expected().isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeNumberField("minutes", step.expected().get().minutes());
    json.writeNumberField("weighted", step.expected().get().weighted());
    json.writeEndObject();
  }
}
