package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Comparison;
import io.faultwright.change.Comparison.Revision;
import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Passage;
import io.faultwright.change.Outcome;
import io.faultwright.change.SymptomChange;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What differs between two revisions, for machines; field names and meaning are a contract. */
public final class CompareJson {
  private final SituationText situations;

  /**
   * @param shared the readings in which situations are written
   */
  public CompareJson(KnowledgeBase shared) {
    this.situations = new SituationText(shared);
  }

  public String write(Comparison comparison) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", comparison.handbook());
          revision(json, "before", comparison.before());
          revision(json, "after", comparison.after());
          json.writeBooleanField("sameMeaning", comparison.sameMeaning());
          json.writeObjectFieldStart("equipment");
          builds(json, "added", comparison.added());
          builds(json, "removed", comparison.removed());
          json.writeEndObject();
          symptoms(json, comparison.symptoms());
          edits(json, comparison.edits());
        });
  }

  private static void revision(JsonGenerator json, String field, Revision revision)
      throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("revision", revision.number());
    json.writeStringField("date", revision.date());
    json.writeEndObject();
  }

  private static void builds(JsonGenerator json, String field, List<Build> builds)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (Build build : builds) {
      json.writeStartObject();
      json.writeStringField("model", build.model().id());
      Json.optional(json, "software", build.software().map(version -> version.text()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void symptoms(JsonGenerator json, List<SymptomChange> symptoms) throws IOException {
    json.writeArrayFieldStart("symptoms");
    for (SymptomChange symptom : symptoms) {
      json.writeStartObject();
      json.writeStringField("id", symptom.id());
      json.writeBooleanField("unchanged", symptom.unchanged());
      json.writeStringField("proof", "exact");
      Json.share(json, "share", Optional.of(symptom.share()));
      json.writeBooleanField("complete", !symptom.more());
      regions(json, symptom.regions());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void regions(JsonGenerator json, List<ChangedRegion> regions) throws IOException {
    json.writeArrayFieldStart("regions");
    for (ChangedRegion region : regions) {
      json.writeStartObject();
      outcome(json, "before", region.before());
      outcome(json, "after", region.after());
      tests(json, "equipment", region.equipment());
      tests(json, "readings", region.readings());
      situations.write(json, "witness", region.witness());
      Json.share(json, "share", Optional.of(region.share()));
      json.writeBooleanField("replayed", region.replayed());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void outcome(JsonGenerator json, String field, Outcome outcome)
      throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("kind", outcome.kind().word());
    Json.strings(json, "answers", outcome.answers().stream().map(RuleText::answer).toList());
    json.writeEndObject();
  }

  private static void tests(JsonGenerator json, String field, List<RegionTest> tests)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (RegionTest test : tests) {
      json.writeStartObject();
      json.writeStringField("reading", test.reading());
      json.writeStringField("accepts", test.accepts());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void edits(JsonGenerator json, List<Edit> edits) throws IOException {
    json.writeArrayFieldStart("edits");
    for (Edit edit : edits) {
      json.writeStartObject();
      json.writeStringField("concerns", edit.concern().word());
      json.writeStringField("kind", edit.kind());
      json.writeStringField("id", edit.id());
      json.writeStringField("field", edit.field());
      json.writeStringField("manner", edit.manner());
      passage(json, "before", edit.before());
      passage(json, "after", edit.after());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void passage(JsonGenerator json, String field, Optional<Passage> passage)
      throws IOException {
    json.writeFieldName(field);
    if (passage.isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeStringField("text", passage.get().text());
    Json.places(json, List.of(passage.get().place()));
    json.writeEndObject();
  }
}
