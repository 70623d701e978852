package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.RuleTrace;
import io.faultwright.run.TestTrace;
import io.faultwright.run.Trace;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.util.Map;

/** What the rules say about cases, for machines. */
public final class TraceJson {
  private final TestWords tests;
  private final NoteWords noteWords;
  private final BorderlineJson borderlines;
  private final NameplateFigures nameplates;

  public TraceJson(KnowledgeBase kb) {
    this.tests = new TestWords(kb);
    this.noteWords = new NoteWords(kb);
    this.borderlines = new BorderlineJson(kb);
    this.nameplates = new NameplateFigures(kb);
  }

  public String write(RunReport report, boolean explain) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", report.handbook());
          json.writeArrayFieldStart("cases");
          for (CaseRun run : report.runs()) {
            json.writeStartObject();
            run(json, run, explain);
            json.writeEndObject();
          }
          json.writeEndArray();
          ProblemJson.problems(json, report.problems());
          json.writeObjectFieldStart("summary");
          json.writeNumberField("passed", report.passed());
          json.writeNumberField("failed", report.failed());
          json.writeEndObject();
        });
  }

  private void run(JsonGenerator json, CaseRun run, boolean explain) throws IOException {
    Trace trace = run.trace();
    json.writeStringField("case", run.recorded().id());
    json.writeStringField("symptom", trace.symptom());
    json.writeStringField("status", trace.status().word());
    Json.strings(json, "answers", trace.answers().stream().map(RuleText::answer).toList());
    Json.texts(json, "nameplate", nameplates.of(run));
    json.writeBooleanField("contradictory", trace.contradictory());
    Json.strings(json, "stillPossible", trace.stillPossible());
    Json.strings(json, "ruledOut", trace.ruledOut());
    Json.optional(json, "next", trace.next());
    Json.strings(
        json,
        "notes",
        trace.notes().stream().map(n -> String.join("\n", noteWords.lines(n))).toList());
    borderlines.write(json, run.borderline());
    expected(json, run);
    if (explain) {
      rules(json, trace);
    }
  }

  private static void expected(JsonGenerator json, CaseRun run) throws IOException {
    if (run.judged()) {
      Json.strings(
          json, "expected", run.recorded().expect().stream().map(RuleText::answer).toList());
      json.writeBooleanField("passed", run.result().passed());
    } else {
      json.writeNullField("expected");
      json.writeNullField("passed");
    }
  }

  private void rules(JsonGenerator json, Trace trace) throws IOException {
    json.writeArrayFieldStart("rules");
    for (Map.Entry<String, RuleTrace> rule : trace.rules().entrySet()) {
      json.writeStartObject();
      json.writeStringField("rule", rule.getKey());
      json.writeStringField("state", RuleWords.state(rule.getValue()).replace(' ', '-'));
      Json.strings(json, "silencedBy", RuleWords.silencers(rule.getValue()));
      json.writeArrayFieldStart("because");
      for (TestTrace test : RuleWords.reasons(rule.getValue())) {
        test(json, test);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void test(JsonGenerator json, TestTrace test) throws IOException {
    json.writeStartObject();
    json.writeStringField("subject", test.test().subject());
    json.writeStringField("test", tests.wanted(test));
    json.writeStringField("found", tests.found(test));
    Json.strings(json, "missing", test.missing());
    json.writeEndObject();
  }
}
