package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Elsewhere;
import io.faultwright.ambiguity.Distinction.Overlap;
import io.faultwright.ambiguity.Distinction.Single;
import io.faultwright.ambiguity.Distinctions;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.ambiguity.Taking;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** Which readings tell which faults apart, for machines; field names and meaning are a contract. */
public final class DistinctionJson {
  private final SituationText situations;

  public DistinctionJson(KnowledgeBase kb) {
    this.situations = new SituationText(kb);
  }

  public String write(Distinctions distinctions) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", distinctions.handbook());
          json.writeArrayFieldStart("symptoms");
          for (SymptomFaults symptom : distinctions.symptoms()) {
            json.writeStartObject();
            symptom(json, symptom);
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private void symptom(JsonGenerator json, SymptomFaults symptom) throws IOException {
    json.writeStringField("id", symptom.symptom());
    Json.strings(json, "faults", symptom.faults());
    json.writeArrayFieldStart("groups");
    for (SortedSet<String> group : symptom.groups()) {
      json.writeStartArray();
      for (String fault : group) {
        json.writeString(fault);
      }
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("pairs");
    for (Distinction pair : symptom.pairs()) {
      json.writeStartObject();
      pair(json, pair);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void pair(JsonGenerator json, Distinction pair) throws IOException {
    Json.strings(json, "faults", List.of(pair.faults().one(), pair.faults().other()));
    json.writeBooleanField("always", pair.always());
    json.writeBooleanField("sameMachine", pair.sameMachine());
    taking(json, "cheapest", pair.cheapest());
    Json.strings(json, "needed", pair.needed());
    json.writeArrayFieldStart("alone");
    for (Single single : pair.singles()) {
      json.writeStartObject();
      json.writeStringField("reading", single.reading());
      json.writeBooleanField("always", single.always());
      json.writeNumberField("settles", single.settles());
      Takings.members(json, single.taking());
      json.writeEndObject();
    }
    json.writeEndArray();
    overlap(json, pair.overlap());
    elsewhere(json, pair.elsewhere());
  }

  private static void taking(JsonGenerator json, String field, Optional<Taking> taking)
      throws IOException {
    if (taking.isEmpty()) {
      json.writeNullField(field);
      return;
    }
    json.writeObjectFieldStart(field);
    Takings.members(json, taking.get());
    json.writeEndObject();
  }

  private void overlap(JsonGenerator json, Optional<Overlap> overlap) throws IOException {
    if (overlap.isEmpty()) {
      json.writeNullField("both");
      return;
    }
    json.writeObjectFieldStart("both");
    json.writeBooleanField("declared", overlap.get().declared());
    Json.strings(json, "rules", overlap.get().rules());
    Json.share(json, "share", Optional.of(overlap.get().share()));
    situations.write(json, "witness", overlap.get().witness());
    json.writeBooleanField("replayed", overlap.get().replayed());
    json.writeEndObject();
  }

  private static void elsewhere(JsonGenerator json, Optional<Elsewhere> elsewhere)
      throws IOException {
    if (elsewhere.isEmpty()) {
      json.writeNullField("elsewhere");
      return;
    }
    json.writeObjectFieldStart("elsewhere");
    json.writeStringField("symptom", elsewhere.get().symptom());
    Takings.members(json, elsewhere.get().taking());
    json.writeEndObject();
  }
}
