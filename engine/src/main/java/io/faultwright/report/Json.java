package io.faultwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import io.faultwright.finding.Share;
import io.faultwright.source.Place;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** Writes JSON with fields in a fixed order and line feeds on every system. */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  /** Something that can fail only because writing to memory fails, which it does not. */
  @FunctionalInterface
  interface Content {
    void write(JsonGenerator json) throws IOException;
  }

  /** The text of one JSON object with a line feed at its end. */
  static String object(Content fields) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
      json.writeStartObject();
      fields.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  static void strings(JsonGenerator json, String field, Collection<String> values)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }

  static void texts(JsonGenerator json, String field, SortedMap<String, String> texts)
      throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<String, String> text : texts.entrySet()) {
      json.writeStringField(text.getKey(), text.getValue());
    }
    json.writeEndObject();
  }

  static void optional(JsonGenerator json, String field, Optional<String> value)
      throws IOException {
    json.writeFieldName(field);
    if (value.isPresent()) {
      json.writeString(value.get());
    } else {
      json.writeNull();
    }
  }

  static void places(JsonGenerator json, Collection<Place> places) throws IOException {
    json.writeArrayFieldStart("places");
    for (Place place : places) {
      json.writeStartObject();
      json.writeStringField("file", place.file());
      json.writeNumberField("line", place.line());
      json.writeNumberField("column", place.column());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  static void share(JsonGenerator json, String field, Optional<Share> share) throws IOException {
    json.writeFieldName(field);
    if (share.isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeNumberField("low", share.get().low());
    json.writeNumberField("high", share.get().high());
    json.writeBooleanField("exact", share.get().exact());
    json.writeEndObject();
  }
}
