package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.logbook.Came;
import io.faultwright.logbook.Followed;
import io.faultwright.logbook.Followed.Some;
import io.faultwright.logbook.Parting;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Version;
import io.faultwright.operation.Outcomes;
import io.faultwright.operation.Program;
import io.faultwright.quantity.Decimals;
import io.faultwright.resolve.Told;
import io.faultwright.source.Place;
import java.io.IOException;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a sequence did along a log, and where the two part, for machines; a contract. */
public final class FollowJson {
  private final String handbook;
  private final Program program;
  private final ReasonWords reasons;

  public FollowJson(KnowledgeBase kb, Program program) {
    this.handbook = kb.handbook().title();
    this.program = program;
    this.reasons = new ReasonWords(program);
  }

  /** All of it. */
  public String write(Followed followed) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", handbook);
          json.writeStringField("sequence", program.sequence().id());
          json.writeStringField("model", program.build().model().id());
          Json.optional(json, "software", program.build().software().map(Version::text));
          json.writeBooleanField("agrees", followed.agrees());
          json.writeNumberField("entries", followed.entries());
          json.writeNumberField("observed", followed.seen());
          seconds(json, "within", followed.within());
          seconds(json, "end", followed.end());
          phases(json, "phases", followed.phases());
          phases(json, "stops", followed.stops());
          partings(json, followed.partings());
          counts(json, "counters", followed.counts());
          outcomes(json, followed.outcomes());
        });
  }

  private void seconds(JsonGenerator json, String field, long steps) throws IOException {
    number(json, field, program.sequence().step().multiply(BigInteger.valueOf(steps)));
  }

  private static void number(JsonGenerator json, String field, BigFraction value)
      throws IOException {
    json.writeFieldName(field);
    json.writeNumber(Decimals.show(value));
  }

  private void phases(JsonGenerator json, String field, Some<Came> phases) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeNumberField("all", phases.all());
    json.writeArrayFieldStart("last");
    for (Came came : phases.kept()) {
      json.writeStartObject();
      phase(json, came);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void phase(JsonGenerator json, Came came) throws IOException {
    Phase phase = program.phase(came.now().phase());
    seconds(json, "at", came.now().step());
    json.writeStringField("phase", phase.id());
    Json.optional(json, "display", phase.display());
    json.writeBooleanField("stop", phase.stop());
    json.writeStringField("why", reasons.why(came));
    Json.optional(json, "counter", came.now().reason().counter());
  }

  private void partings(JsonGenerator json, Some<Parting> partings) throws IOException {
    json.writeObjectFieldStart("partings");
    json.writeNumberField("all", partings.all());
    json.writeArrayFieldStart("first");
    for (Parting parting : partings.kept()) {
      json.writeStartObject();
      seconds(json, "at", parting.step());
      told(json, "log", parting.entry().told());
      seconds(json, "logSince", parting.entry().step());
      told(json, "model", parting.model());
      seconds(json, "modelSince", parting.since());
      json.writeObjectFieldStart("modelPhase");
      phase(json, parting.came());
      json.writeEndObject();
      Json.strings(json, "waitedFor", reasons.waiting(parting.came().now()));
      Json.places(json, List.<Place>of(parting.entry().place()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void told(JsonGenerator json, String field, Told told) throws IOException {
    json.writeObjectFieldStart(field);
    if (told instanceof Told.OutputIs seen) {
      json.writeStringField("output", seen.output());
      json.writeBooleanField("on", seen.on());
    } else if (told instanceof Told.PhaseIs seen) {
      json.writeStringField("phase", seen.phase());
    } else if (told instanceof Told.Shows seen) {
      json.writeStringField("display", seen.display());
    }
    json.writeEndObject();
  }

  private static void counts(JsonGenerator json, String field, Map<String, Long> counts)
      throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<String, Long> count : counts.entrySet()) {
      json.writeNumberField(count.getKey(), count.getValue());
    }
    json.writeEndObject();
  }

  private static void outcomes(JsonGenerator json, Outcomes.Snapshot outcomes) throws IOException {
    json.writeObjectFieldStart("outcomes");
    Json.optional(json, "stop", outcomes.stop());
    Json.optional(json, "display", outcomes.display());
    json.writeObjectFieldStart("lastStay");
    for (Map.Entry<String, BigFraction> stay : outcomes.lastStay().entrySet()) {
      number(json, stay.getKey(), stay.getValue());
    }
    json.writeEndObject();
    counts(json, "counters", outcomes.counts());
    json.writeEndObject();
  }
}
