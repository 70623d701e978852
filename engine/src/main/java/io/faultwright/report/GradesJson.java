package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.grading.Choice;
import io.faultwright.grading.Given;
import io.faultwright.grading.ItemReport;
import io.faultwright.grading.QuizReport;
import io.faultwright.grading.Reliability;
import io.faultwright.grading.Share;
import io.faultwright.handin.Course;
import io.faultwright.handin.Entry;
import io.faultwright.handin.Grades;
import io.faultwright.handin.IssuedQuiz;
import io.faultwright.handin.Remark;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Grades for machines of the trainer; certificates are made from them. */
public final class GradesJson {
  private final Grades grades;
  private final IssuedQuiz quiz;
  private final UnaryOperator<String> address;

  /**
   * @param address where a page of the handbook stands
   */
  public GradesJson(Grades grades, UnaryOperator<String> address) {
    this.grades = grades;
    this.quiz = grades.quiz();
    this.address = address;
  }

  /** The text of the file. */
  public String write() {
    return Json.object(
        json -> {
          head(json);
          json.writeArrayFieldStart("participants");
          for (Entry entry : grades.entries()) {
            write(json, entry);
          }
          json.writeEndArray();
          missing(json);
          symptoms(json);
          if (grades.report().isPresent()) {
            report(json, grades.report().get());
          }
          remarks(json);
          Json.strings(json, "cannotDetect", GradesText.UNSEEN);
        });
  }

  private void head(JsonGenerator json) throws IOException {
    Course about = quiz.about();
    json.writeStringField("what", "grades");
    json.writeStringField("quiz", quiz.fingerprint());
    json.writeStringField("registerKey", quiz.registerKey());
    json.writeStringField("session", about.session());
    json.writeStringField("title", about.title());
    json.writeStringField("handbook", about.handbook());
    json.writeStringField("maker", about.maker());
    json.writeStringField("language", about.language());
    Json.optional(json, "base", about.base());
    json.writeNumberField("passMark", quiz.passMark());
    json.writeNumberField("itemsEach", quiz.items().size());
    Json.optional(json, "date", about.date().map(LocalDate::toString));
    Json.optional(json, "handInBy", quiz.handInBy().map(LocalDate::toString));
  }

  private static void write(JsonGenerator json, Entry entry) throws IOException {
    json.writeStartObject();
    json.writeNumberField("number", entry.participant());
    json.writeStringField("name", entry.name());
    json.writeStringField("handedIn", entry.handedIn());
    json.writeBooleanField("paper", entry.paper());
    json.writeBooleanField("late", entry.late());
    json.writeBooleanField("passed", entry.passed());
    share(json, entry.score().all());
    json.writeObjectFieldStart("symptoms");
    for (Map.Entry<String, Share> topic : entry.score().topics().entrySet()) {
      json.writeObjectFieldStart(topic.getKey());
      share(json, topic.getValue());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeObjectFieldStart("items");
    for (Given given : entry.sheet().items()) {
      json.writeObjectFieldStart(given.item());
      json.writeBooleanField("right", given.isRight());
      Json.optional(json, "chosen", given.chosen());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void share(JsonGenerator json, Share share) throws IOException {
    json.writeNumberField("right", share.right());
    json.writeNumberField("of", share.of());
  }

  private void missing(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("notGraded");
    for (int number : grades.missing()) {
      json.writeNumber(number);
    }
    json.writeEndArray();
  }

  private void symptoms(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("symptoms");
    if (grades.report().isPresent()) {
      for (WeakSpot spot : WeakSpot.of(grades)) {
        json.writeStartObject();
        json.writeStringField("symptom", spot.symptom());
        json.writeStringField("title", quiz.symptoms().get(spot.symptom()));
        share(json, spot.share());
        Json.strings(json, "improve", spot.pages().stream().map(address).toList());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private void report(JsonGenerator json, QuizReport report) throws IOException {
    json.writeNumberField("mean", report.mean());
    json.writeNumberField("deviation", report.deviation());
    if (report.reliability().isPresent()) {
      Reliability reliability = report.reliability().get();
      json.writeNumberField("kr20", reliability.kr20());
      json.writeNumberField("kr21", reliability.kr21());
      json.writeNumberField("standardError", reliability.standardError());
    }
    json.writeArrayFieldStart("items");
    List<ItemReport> items = report.items();
    for (int i = 0; i < items.size(); i++) {
      write(json, items.get(i), address.apply(quiz.items().get(i).page()));
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, ItemReport item, String page) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", item.item());
    json.writeStringField("symptom", item.topic());
    json.writeStringField("page", page);
    json.writeNumberField("difficulty", item.difficulty());
    number(json, "pointBiserial", item.pointBiserial());
    number(json, "corrected", item.corrected());
    json.writeNumberField("discrimination", item.discrimination());
    json.writeStringField("band", slug(item.band()));
    json.writeNumberField("leftOut", item.omitted());
    Json.strings(json, "flags", item.flags().stream().map(GradesJson::slug).toList());
    json.writeArrayFieldStart("choices");
    for (Choice choice : item.choices()) {
      json.writeStartObject();
      json.writeStringField("option", choice.option());
      json.writeBooleanField("right", choice.right());
      json.writeNumberField("count", choice.count());
      json.writeNumberField("upper", choice.upper());
      json.writeNumberField("lower", choice.lower());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void number(JsonGenerator json, String field, Optional<Double> number)
      throws IOException {
    if (number.isPresent()) {
      json.writeNumberField(field, number.get());
    } else {
      json.writeNullField(field);
    }
  }

  private static String slug(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private void remarks(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("remarks");
    for (Remark remark : grades.remarks()) {
      json.writeStartObject();
      json.writeStringField("kind", remark.kind().word());
      json.writeStringField("message", remark.problem().message());
      json.writeStringField("help", remark.problem().help());
      Json.places(json, remark.problem().places());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
