package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Borderline;
import io.faultwright.run.Borderline.Near;
import io.faultwright.run.Borderline.Other;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Borderline cases, for machines. */
final class BorderlineJson {
  private final BorderlineWords words;
  private final SituationText situations;

  BorderlineJson(KnowledgeBase kb) {
    this.words = new BorderlineWords(kb);
    this.situations = new SituationText(kb);
  }

  /** A member {@code borderline}; null where nothing else is within the tolerances. */
  void write(JsonGenerator json, Optional<Borderline> borderline) throws IOException {
    if (borderline.isEmpty()) {
      json.writeNullField("borderline");
      return;
    }
    json.writeObjectFieldStart("borderline");
    boolean computed = borderline.get() instanceof Borderline.Found;
    json.writeBooleanField("computed", computed);
    if (borderline.get() instanceof Borderline.Found found) {
      found(json, found);
    }
    json.writeEndObject();
  }

  private void found(JsonGenerator json, Borderline.Found found) throws IOException {
    json.writeArrayFieldStart("near");
    for (Near near : found.near()) {
      near(json, near);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("others");
    for (Other other : found.others()) {
      other(json, other);
    }
    json.writeEndArray();
    Json.optional(json, "next", found.next());
    json.writeBooleanField("decides", found.decides());
  }

  private void near(JsonGenerator json, Near near) throws IOException {
    json.writeStartObject();
    json.writeStringField("reading", near.reading());
    json.writeStringField("end", BorderlineWords.word(near.end()));
    json.writeStringField("at", words.amount(near.reading(), near.at()));
    json.writeStringField("distance", words.difference(near.reading(), near.distance()));
    json.writeStringField("tolerance", words.difference(near.reading(), near.tolerance()));
    json.writeObjectFieldStart("followed");
    for (Map.Entry<String, BigFraction> driver : near.followed().entrySet()) {
      json.writeStringField(driver.getKey(), words.difference(driver.getKey(), driver.getValue()));
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void other(JsonGenerator json, Other other) throws IOException {
    json.writeStartObject();
    json.writeStringField("status", other.verdict().status().word());
    Json.strings(
        json, "answers", other.verdict().answers().stream().map(RuleText::answer).toList());
    json.writeBooleanField("contradictory", other.verdict().contradictory());
    situations.write(json, "example", other.example());
    json.writeEndObject();
  }
}
