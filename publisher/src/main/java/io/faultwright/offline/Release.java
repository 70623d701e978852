package io.faultwright.offline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * The state of a handbook as devices tell it from another.
 *
 * @param title of the handbook
 * @param language BCP 47 tag of its texts
 * @param direction {@code ltr} or {@code rtl}
 * @param revision as the handbook names it
 * @param date of the revision
 * @param symptoms titles of symptoms, by the file whose change means that the diagnosis changed
 * @param summary what changed since the last revision, a line each; may be empty
 * @param words built-in texts in the handbook's language, by the English ones; may be empty
 */
public record Release(
    String title,
    String language,
    String direction,
    String revision,
    String date,
    SortedMap<String, String> symptoms,
    List<String> summary,
    SortedMap<String, String> words) {
  public Release {
    summary = List.copyOf(summary);
  }

  Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("title", title);
    fields.put("language", language);
    fields.put("direction", direction);
    fields.put("revision", revision);
    fields.put("date", date);
    fields.put("symptoms", symptoms);
    fields.put("summary", summary);
    fields.put("words", words);
    return fields;
  }
}
