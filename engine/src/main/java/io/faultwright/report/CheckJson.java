package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.finding.EventCourse;
import io.faultwright.finding.Finding;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.wording.Clock;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A check's report for machines; the field names and their meaning are a contract. */
public final class CheckJson {
  private final SituationText situations;

  public CheckJson(KnowledgeBase kb) {
    this.situations = new SituationText(kb);
  }

  public String write(CheckReport report) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", report.handbook());
          findings(json, report.findings());
          symptoms(json, report.symptoms());
          charts(json, report.charts());
          json.writeObjectFieldStart("cases");
          json.writeNumberField("passed", report.casesPassed());
          json.writeNumberField("failed", report.casesFailed());
          json.writeEndObject();
          json.writeObjectFieldStart("summary");
          json.writeNumberField("errors", report.errors());
          json.writeNumberField("warnings", report.warnings());
          json.writeEndObject();
        });
  }

  private void findings(JsonGenerator json, List<Finding> findings) throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding finding : findings) {
      json.writeStartObject();
      fields(json, finding);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** The members of a finding. */
  void fields(JsonGenerator json, Finding finding) throws IOException {
    json.writeStringField("kind", finding.kind().slug());
    json.writeStringField("severity", Ink.word(finding.kind().severity()));
    Json.optional(json, "symptom", finding.symptom());
    if (finding.chart().isPresent()) {
      json.writeStringField("chart", finding.chart().get());
    }
    Json.strings(json, "rules", finding.rules());
    Json.places(json, finding.places());
    json.writeStringField("message", finding.message());
    json.writeStringField("help", finding.help());
    witness(json, finding.witness());
    derived(json, finding.witness());
    region(json, finding.region());
    if (finding.course().isPresent()) {
      course(json, finding.course().get());
    }
    Json.share(json, "share", finding.share());
    json.writeBooleanField("replayed", finding.replayed());
  }

  /** A situation for people. */
  List<String> lines(Situation situation) {
    return situations.lines(situation);
  }

  private void witness(JsonGenerator json, Optional<Situation> witness) throws IOException {
    if (witness.isEmpty()) {
      json.writeNullField("witness");
      return;
    }
    situations.write(json, "witness", witness.get());
  }

  /** What follows from the witness, beside it, so that the witness can be run as it stands. */
  private void derived(JsonGenerator json, Optional<Situation> witness) throws IOException {
    Map<String, String> derived = witness.map(situations::derived).orElse(Map.of());
    if (!derived.isEmpty()) {
      json.writeObjectFieldStart("derived");
      for (Map.Entry<String, String> entry : derived.entrySet()) {
        json.writeStringField(entry.getKey(), entry.getValue());
      }
      json.writeEndObject();
    }
  }

  private static void course(JsonGenerator json, EventCourse course) throws IOException {
    json.writeObjectFieldStart("course");
    json.writeStringField("sequence", course.sequence());
    json.writeObjectFieldStart("set");
    for (Map.Entry<String, BigFraction> one : course.set().entrySet()) {
      json.writeStringField(one.getKey(), Clock.lasting(one.getValue()));
    }
    json.writeEndObject();
    json.writeArrayFieldStart("entries");
    for (EventCourse.Entry entry : course.entries()) {
      json.writeStartObject();
      json.writeStringField("at", Clock.of(entry.seconds()));
      json.writeStringField(entry.event().isPresent() ? "event" : "begins", CourseText.what(entry));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("end", Clock.of(course.end()));
    json.writeEndObject();
  }

  private static void region(JsonGenerator json, List<RegionTest> region) throws IOException {
    json.writeArrayFieldStart("region");
    for (RegionTest test : region) {
      json.writeStartObject();
      json.writeStringField("reading", test.reading());
      json.writeStringField("accepts", test.accepts());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void symptoms(JsonGenerator json, List<SymptomSummary> symptoms)
      throws IOException {
    json.writeArrayFieldStart("symptoms");
    for (SymptomSummary symptom : symptoms) {
      json.writeStartObject();
      json.writeStringField("id", symptom.id());
      json.writeNumberField("rules", symptom.rules());
      proved(json, "gapFree", symptom.gapFree());
      proved(json, "contradictionFree", symptom.contradictionFree());
      json.writeStringField("proof", symptom.proof().word());
      Json.share(json, "unanswered", symptom.unanswered());
      Json.share(json, "contradicted", symptom.contradicted());
      Json.share(json, "escalated", symptom.escalated());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void charts(JsonGenerator json, List<ChartSummary> charts) throws IOException {
    json.writeArrayFieldStart("charts");
    for (ChartSummary chart : charts) {
      json.writeStartObject();
      json.writeStringField("id", chart.id());
      json.writeStringField("symptom", chart.symptom());
      proved(json, "proved", chart.proved());
      ChartEffortJson.write(json, chart.effort());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void proved(JsonGenerator json, String field, Optional<Boolean> proved)
      throws IOException {
    json.writeFieldName(field);
    if (proved.isPresent()) {
      json.writeBoolean(proved.get());
    } else {
      json.writeNull();
    }
  }
}
