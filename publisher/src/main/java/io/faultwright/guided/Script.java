package io.faultwright.guided;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * Data as a script that does nothing but hand them over: a page that is opened from a folder may
 * load scripts and nothing else. No text in it can end the script or its element.
 */
final class Script {
  private static final JsonFactory FACTORY = new JsonFactory();

  private Script() {}

  /** The call of a function of ours with these values, UTF-8. */
  static byte[] call(String function, Object... values) {
    StringBuilder text = new StringBuilder("faultwright.").append(function).append('(');
    for (int i = 0; i < values.length; i++) {
      text.append(i == 0 ? "" : ",").append(json(values[i]));
    }
    return text.append(");\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String json(Object value) {
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
    if (value instanceof Fields fields) {
      writeObject(json, fields.map());
    } else if (value instanceof Map<?, ?> map) {
      writeObject(json, map);
    } else if (value instanceof Iterable<?> list) {
      writeArray(json, list);
    } else if (value instanceof Integer number) {
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
      if (each == NULL) {
        json.writeNull();
      } else {
        write(json, each);
      }
    }
    json.writeEndArray();
  }

  /** Stands for a value that is not there, in a list. */
  static final Object NULL = List.of("null");
}
