package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.adequacy.Coverage;
import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.Goal;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.adequacy.MutationScore;
import io.faultwright.adequacy.Tally;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.RuleText;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How good a set of cases is, for machines; field names and meaning are a contract. */
public final class CasesJson {
  private final SituationText situations;

  public CasesJson(KnowledgeBase kb) {
    this.situations = new SituationText(kb);
  }

  public String write(Measured measured) {
    return Json.object(
        json -> {
          json.writeStringField("handbook", measured.handbook());
          json.writeObjectFieldStart("cases");
          json.writeNumberField("measured", measured.counts().counted());
          json.writeNumberField("failed", measured.counts().failed());
          json.writeNumberField("unconfirmed", measured.counts().unconfirmed());
          json.writeEndObject();
          json.writeObjectFieldStart("work");
          json.writeNumberField("done", measured.done().pieces());
          json.writeNumberField("of", measured.done().of());
          json.writeBooleanField("complete", measured.done().whole());
          json.writeEndObject();
          tallies(json, measured.tallies());
          equipment(json, measured);
          symptoms(json, measured.symptoms());
          mistakes(json, measured.mutants());
        });
  }

  private static void tallies(JsonGenerator json, Map<Criterion, Tally> tallies)
      throws IOException {
    json.writeObjectFieldStart("criteria");
    for (Map.Entry<Criterion, Tally> entry : tallies.entrySet()) {
      json.writeObjectFieldStart(entry.getKey().word());
      tally(json, entry.getValue());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static void tally(JsonGenerator json, Tally tally) throws IOException {
    json.writeNumberField("shown", tally.shown());
    json.writeNumberField("of", tally.of());
  }

  private static void equipment(JsonGenerator json, Measured measured) throws IOException {
    json.writeArrayFieldStart("equipment");
    for (Build build : measured.builds()) {
      json.writeStartObject();
      identity(json, build);
      tally(json, measured.on(build));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void identity(JsonGenerator json, Build build) throws IOException {
    json.writeStringField("model", build.model().id());
    Json.optional(json, "software", build.software().map(version -> version.text()));
  }

  private static void symptoms(JsonGenerator json, List<Coverage> symptoms) throws IOException {
    json.writeArrayFieldStart("symptoms");
    for (Coverage symptom : symptoms) {
      json.writeStartObject();
      json.writeStringField("id", symptom.symptom());
      json.writeNumberField("cases", symptom.cases());
      tallies(json, symptom.tallies());
      json.writeArrayFieldStart("goals");
      for (GoalStatus status : symptom.goals()) {
        goal(json, status);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void goal(JsonGenerator json, GoalStatus status) throws IOException {
    Goal goal = status.goal();
    json.writeStartObject();
    json.writeStringField("criterion", goal.criterion().word());
    json.writeStringField("symptom", goal.symptom());
    Json.optional(json, "rule", goal.rule());
    json.writeStringField("words", goal.words());
    Json.places(json, List.of(goal.place()));
    json.writeBooleanField("shown", status.shown());
    builds(json, "possible", status.possible());
    builds(json, "shownOn", status.shownOn());
    json.writeEndObject();
  }

  private static void builds(JsonGenerator json, String field, Collection<Build> builds)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (Build build : builds) {
      json.writeStartObject();
      identity(json, build);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void mistakes(JsonGenerator json, Optional<List<MutantStatus>> mutants)
      throws IOException {
    json.writeFieldName("mistakes");
    if (mutants.isEmpty()) {
      json.writeNull();
      return;
    }
    MutationScore score = MutationScore.of(mutants.get());
    json.writeStartObject();
    json.writeNumberField("killed", score.killed());
    json.writeNumberField("survived", score.survived());
    json.writeNumberField("equivalent", score.equivalent());
    json.writeNumberField("undecided", score.undecided());
    json.writeArrayFieldStart("each");
    for (MutantStatus status : mutants.get()) {
      mistake(json, status);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void mistake(JsonGenerator json, MutantStatus status) throws IOException {
    json.writeStartObject();
    json.writeStringField("operator", status.mutant().operator().word());
    Json.optional(json, "symptom", status.mutant().symptom());
    Json.optional(json, "rule", status.mutant().rule());
    json.writeStringField("words", status.mutant().words());
    Json.places(json, List.of(status.mutant().place()));
    json.writeStringField("fate", status.fate().name().toLowerCase(Locale.ROOT));
    Json.optional(json, "by", status.by());
    json.writeFieldName("shownBy");
    if (status.shownBy().isPresent()) {
      difference(json, status.shownBy().get());
    } else {
      json.writeNull();
    }
    json.writeEndObject();
  }

  private void difference(JsonGenerator json, Difference difference) throws IOException {
    json.writeStartObject();
    json.writeStringField("symptom", difference.symptom());
    json.writeObjectFieldStart("given");
    for (Map.Entry<String, String> entry : situations.entries(difference.situation()).entrySet()) {
      json.writeStringField(entry.getKey(), entry.getValue());
    }
    json.writeEndObject();
    Json.strings(json, "right", difference.right().stream().map(RuleText::answer).toList());
    Json.strings(json, "wrong", difference.wrong().stream().map(RuleText::answer).toList());
    json.writeEndObject();
  }
}
