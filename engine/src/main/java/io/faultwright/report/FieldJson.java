package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.diagnostic.Problem;
import io.faultwright.field.Contrast;
import io.faultwright.field.Disagreement;
import io.faultwright.field.FieldReport;
import io.faultwright.field.FrequencyUpdate;
import io.faultwright.field.Ground;
import io.faultwright.field.GroundReport;
import io.faultwright.field.Remark;
import io.faultwright.field.RowCounts;
import io.faultwright.field.Separation;
import io.faultwright.field.SymptomReport;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.quantity.Decimals;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** What recorded jobs say about the rules, for machines. */
public final class FieldJson {
  private final FieldWords words;

  public FieldJson(KnowledgeBase kb) {
    this.words = new FieldWords(kb);
  }

  /**
   * The whole report.
   *
   * @param problems of the first rows that could not be read
   * @param frequencies whether the frequencies of faults were asked for
   */
  public String write(FieldReport report, List<Problem> problems, boolean frequencies) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", report.handbook());
          json.writeArrayFieldStart("symptoms");
          for (SymptomReport symptom : report.symptoms()) {
            symptom(json, symptom);
          }
          json.writeEndArray();
          remarks(json, report);
          if (frequencies) {
            frequencies(json, report.frequencies());
          }
          ProblemJson.problems(json, problems);
          counts(json, report.counts());
        });
  }

  private void symptom(JsonGenerator json, SymptomReport symptom) throws IOException {
    json.writeStartObject();
    json.writeStringField("symptom", symptom.symptom());
    json.writeNumberField("agreed", symptom.agreed());
    json.writeNumberField("disagreed", symptom.disagreed());
    json.writeNumberField("withoutConfirmedFault", symptom.open());
    json.writeArrayFieldStart("said");
    for (GroundReport ground : symptom.grounds()) {
      ground(json, ground);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void ground(JsonGenerator json, GroundReport report) throws IOException {
    Ground ground = report.ground();
    json.writeStartObject();
    Json.strings(json, "rules", ground.rules());
    json.writeStringField("status", ground.verdict().status().word());
    Json.strings(
        json, "answers", ground.verdict().answers().stream().map(RuleText::answer).toList());
    json.writeNumberField("agreed", report.agreed());
    json.writeNumberField("disagreed", report.disagreed());
    json.writeArrayFieldStart("disagreements");
    for (Disagreement rows : report.disagreements()) {
      disagreement(json, rows);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void disagreement(JsonGenerator json, Disagreement rows) throws IOException {
    json.writeStartObject();
    Json.strings(json, "confirmed", rows.confirmed().stream().map(RuleText::answer).toList());
    json.writeNumberField("rows", rows.rows());
    Json.places(json, rows.first());
    contrast(json, rows.contrast());
    json.writeEndObject();
  }

  private void contrast(JsonGenerator json, Contrast contrast) throws IOException {
    json.writeStringField(
        "contrast", contrast.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    if (contrast.separation().isPresent()) {
      Separation found = contrast.separation().get();
      json.writeObjectFieldStart("separation");
      json.writeStringField("reading", found.subject());
      json.writeStringField("condition", words.condition(found));
      json.writeNumberField("disagreeing", found.disagreeing());
      json.writeNumberField("ofDisagreeing", found.ofDisagreeing());
      json.writeNumberField("agreeing", found.agreeing());
      json.writeNumberField("ofAgreeing", found.ofAgreeing());
      json.writeEndObject();
    }
  }

  private static void remarks(JsonGenerator json, FieldReport report) throws IOException {
    json.writeArrayFieldStart("unclear");
    for (Remark remark : report.remarks()) {
      json.writeStartObject();
      json.writeStringField("symptom", remark.symptom());
      json.writeStringField("text", remark.text());
      Json.places(json, List.of(remark.place()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeNumberField("furtherUnclear", report.furtherRemarks());
  }

  private static void frequencies(JsonGenerator json, List<FrequencyUpdate> updates)
      throws IOException {
    json.writeArrayFieldStart("frequencies");
    for (FrequencyUpdate update : updates) {
      json.writeStartObject();
      json.writeStringField("fault", update.fault());
      json.writeStringField("before", Decimals.show(update.before()));
      json.writeNumberField("counted", update.counted());
      json.writeStringField("after", Decimals.show(update.after()));
      json.writeNumberField("shareBefore", update.shareBefore().doubleValue());
      json.writeNumberField("shareAfter", update.shareAfter().doubleValue());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void counts(JsonGenerator json, RowCounts counts) throws IOException {
    json.writeObjectFieldStart("rows");
    json.writeNumberField("read", counts.read());
    json.writeNumberField("run", counts.run());
    json.writeNumberField("skipped", counts.skipped());
    json.writeNumberField("agreed", counts.agreed());
    json.writeNumberField("disagreed", counts.disagreed());
    json.writeNumberField("withoutConfirmedFault", counts.open());
    json.writeEndObject();
  }
}
