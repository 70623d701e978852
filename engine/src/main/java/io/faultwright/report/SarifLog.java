package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.finding.FindingKind;
import io.faultwright.source.Place;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.stream.Collectors;

/** The parts of a SARIF log that do not depend on what was found. */
final class SarifLog {
  /** The rule of everything that keeps an input from being read. */
  static final String UNREADABLE = "unreadable-input";

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final Surroundings around;

  SarifLog(Surroundings around) {
    this.around = around;
  }

  /**
   * A log of one run.
   *
   * @param rules writes the rules that the results name
   * @param results writes the results
   * @param unfinished what the run did not get to
   * @param successful whether the input could be read
   */
  String write(
      Json.Content rules, Json.Content results, List<String> unfinished, boolean successful) {
    return Json.object(
        json -> {
          json.writeStringField("$schema", SCHEMA);
          json.writeStringField("version", "2.1.0");
          json.writeArrayFieldStart("runs");
          json.writeStartObject();
          tool(json, rules);
          invocation(json, unfinished, successful);
          json.writeStringField("columnKind", "unicodeCodePoints");
          json.writeArrayFieldStart("results");
          results.write(json);
          json.writeEndArray();
          json.writeEndObject();
          json.writeEndArray();
        });
  }

  private void tool(JsonGenerator json, Json.Content rules) throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "Faultwright");
    if (around.version().isPresent()) {
      json.writeStringField("version", around.version().get());
    }
    json.writeArrayFieldStart("rules");
    rules.write(json);
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private void invocation(JsonGenerator json, List<String> unfinished, boolean successful)
      throws IOException {
    json.writeArrayFieldStart("invocations");
    json.writeStartObject();
    json.writeBooleanField("executionSuccessful", successful);
    json.writeArrayFieldStart("toolExecutionNotifications");
    for (String words : unfinished) {
      json.writeStartObject();
      json.writeStringField("level", "warning");
      message(json, words);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
  }

  void rule(JsonGenerator json, FindingKind kind) throws IOException {
    FindingPage page = FindingPage.of(kind);
    json.writeStartObject();
    json.writeStringField("id", kind.slug());
    multiformat(json, "shortDescription", page.summary());
    multiformat(json, "help", page.help() + "\n\nThe page: docs/findings/" + kind.slug() + ".md");
    if (around.pages().isPresent()) {
      json.writeStringField("helpUri", around.pages().get() + kind.slug() + ".md");
    }
    level(json, Ink.word(kind.severity()));
    json.writeEndObject();
  }

  void ruleOfProblems(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", UNREADABLE);
    multiformat(json, "shortDescription", "something keeps the knowledge base from being read");
    multiformat(json, "help", "Mend the file at this place; until then nothing is checked.");
    level(json, "error");
    json.writeEndObject();
  }

  private static void level(JsonGenerator json, String level) throws IOException {
    json.writeObjectFieldStart("defaultConfiguration");
    json.writeStringField("level", level);
    json.writeEndObject();
  }

  private static void multiformat(JsonGenerator json, String field, String text)
      throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("text", text);
    json.writeEndObject();
  }

  /**
   * A message of plain text. Braces are doubled, and what would read as a link is broken up (SARIF
   * 2.1.0, 3.11.5 and 3.11.6).
   */
  void message(JsonGenerator json, String text) throws IOException {
    json.writeObjectFieldStart("message");
    String plain = text.lines().map(Columns::printable).collect(Collectors.joining("\n"));
    json.writeStringField("text", plain.replace("{", "{{").replace("}", "}}").replace("](", "] ("));
    json.writeEndObject();
  }

  /** The place that tells most, and the others as related ones. */
  void locations(JsonGenerator json, List<Place> places) throws IOException {
    array(json, "locations", places.stream().limit(1).toList());
    if (places.size() > 1) {
      array(json, "relatedLocations", places.subList(1, places.size()));
    }
  }

  private void array(JsonGenerator json, String field, List<Place> places) throws IOException {
    json.writeArrayFieldStart(field);
    for (Place place : places) {
      json.writeStartObject();
      json.writeObjectFieldStart("physicalLocation");
      json.writeObjectFieldStart("artifactLocation");
      json.writeStringField("uri", uri(around.path(place)));
      json.writeEndObject();
      json.writeObjectFieldStart("region");
      json.writeNumberField("startLine", place.line());
      json.writeNumberField("startColumn", place.column());
      json.writeNumberField("endColumn", place.column() + place.length());
      json.writeEndObject();
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A path as a relative reference (RFC 3986): blanks and other signs are encoded. */
  private static String uri(String path) {
    try {
      return new URI(null, null, "/" + path, null).toASCIIString().substring(1);
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(path, e);
    }
  }
}
