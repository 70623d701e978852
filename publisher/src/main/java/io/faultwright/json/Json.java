package io.faultwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * Maps, {@link Fields}, lists, texts, whole numbers and truths as JSON. No text in it can end a
 * script, its element or a line of it.
 */
public final class Json {
  /** Stands for a value that is not there, in a list. */
  public static final Object NULL = List.of("null");

  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  public static String text(Object value) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      write(json, value);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString()
        .replace("<", "\\u003c")
        .replace("\u2028", "\\u2028")
        .replace("\u2029", "\\u2029");
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value == NULL) {
      json.writeNull();
    } else if (value instanceof Fields fields) {
      writeObject(json, fields.map());
    } else if (value instanceof Map<?, ?> map) {
      writeObject(json, map);
    } else if (value instanceof Iterable<?> list) {
      writeArray(json, list);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Long number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else {
      json.writeString((String) value);
    }
  }

  private static void writeObject(JsonGenerator json, Map<?, ?> map) throws IOException {
    json.writeStartObject();
    for (Map.Entry<?, ?> field : map.entrySet()) {
      json.writeFieldName((String) field.getKey());
      write(json, field.getValue());
    }
    json.writeEndObject();
  }

  private static void writeArray(JsonGenerator json, Iterable<?> list) throws IOException {
    json.writeStartArray();
    for (Object each : list) {
      write(json, each);
    }
    json.writeEndArray();
  }
}
