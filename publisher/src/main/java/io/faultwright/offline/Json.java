package io.faultwright.offline;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Maps, lists and texts as JSON that may also stand in a script. */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  static String text(Object value) {
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
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> field : map.entrySet()) {
        json.writeFieldName((String) field.getKey());
        write(json, field.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object each : list) {
        write(json, each);
      }
      json.writeEndArray();
    } else {
      json.writeString((String) value);
    }
  }
}
