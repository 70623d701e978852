package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.grading.QuizKeys;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import io.faultwright.quiz.QuizWording;
import java.io.IOException;
import java.time.LocalDate;
import java.util.SortedMap;
import java.util.TreeMap;

/** A quiz with all its answers, for machines of the trainer. */
public final class QuizJson {
  private final KnowledgeBase kb;
  private final QuizWording words;

  /**
   * @param kb in the language in which the quiz is written
   */
  public QuizJson(KnowledgeBase kb) {
    this.kb = kb;
    this.words = new QuizWording(kb);
  }

  /** The text of the file. */
  public String write(Session session, Quiz quiz) {
    String answers = answers(session, quiz);
    QuizKeys keys = QuizKeys.of(answers, quiz.variants().size());
    return Json.object(
        json -> {
          json.writeStringField("quiz", keys.quiz());
          answers(json, session, quiz);
          json.writeStringField("registerKey", keys.register());
          Json.strings(json, "keys", keys.keys());
        });
  }

  /** The fingerprint of the quiz and the keys of its participants, as in the file. */
  public QuizKeys keys(Session session, Quiz quiz) {
    return QuizKeys.of(answers(session, quiz), quiz.variants().size());
  }

  /** All but what is made from it. */
  private String answers(Session session, Quiz quiz) {
    return Json.object(json -> answers(json, session, quiz));
  }

  private void answers(JsonGenerator json, Session session, Quiz quiz) throws IOException {
    json.writeStringField("session", session.id());
    json.writeStringField("title", session.title());
    json.writeStringField("handbook", kb.handbook().title());
    json.writeStringField("maker", kb.handbook().maker());
    json.writeStringField("language", kb.handbook().language());
    Json.optional(json, "base", kb.handbook().base());
    json.writeNumberField("seed", quiz.seed());
    json.writeNumberField("passMark", session.quiz().orElseThrow().passMark());
    Json.optional(json, "date", session.date().map(LocalDate::toString));
    Json.optional(json, "handInBy", session.handInBy().map(LocalDate::toString));
    Json.texts(json, "symptoms", symptoms(quiz));
    json.writeArrayFieldStart("participants");
    for (Variant variant : quiz.variants()) {
      write(json, variant);
    }
    json.writeEndArray();
  }

  /** Titles by id. */
  private SortedMap<String, String> symptoms(Quiz quiz) {
    SortedMap<String, String> titles = new TreeMap<>();
    quiz.variants().stream()
        .flatMap(variant -> variant.items().stream())
        .map(item -> item.origin().symptom())
        .forEach(id -> titles.put(id, kb.symptoms().get(id).title()));
    return titles;
  }

  private void write(JsonGenerator json, Variant variant) throws IOException {
    json.writeStartObject();
    json.writeNumberField("number", variant.participant());
    json.writeArrayFieldStart("items");
    for (Item item : variant.items()) {
      write(json, item);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(JsonGenerator json, Item item) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", item.id());
    json.writeStringField("kind", item.kind().slug());
    json.writeStringField("symptom", item.origin().symptom());
    json.writeStringField("difficulty", item.rating().difficulty().word());
    json.writeNumberField("points", item.rating().points());
    json.writeArrayFieldStart("known");
    for (QuizWording.Line line : words.known(item)) {
      json.writeStartObject();
      json.writeStringField("label", line.label());
      json.writeStringField("text", line.text());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("question", words.question(item));
    choices(json, item);
    json.writeNumberField("right", item.right() + 1);
    Json.strings(json, "because", words.explanation(item));
    json.writeStringField("page", item.explanation().page().toString());
    Json.strings(json, "rules", item.origin().rules());
    json.writeStringField("from", item.origin().footing().toString());
    json.writeStringField("meaning", item.origin().meaning());
    json.writeEndObject();
  }

  private void choices(JsonGenerator json, Item item) throws IOException {
    json.writeArrayFieldStart("choices");
    for (Choice choice : item.choices()) {
      json.writeStartObject();
      json.writeStringField("text", words.choice(choice));
      Json.optional(json, "near", choice.near().map(near -> near.why().slug()));
      Json.optional(json, "nearBecause", words.nearMiss(choice));
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
