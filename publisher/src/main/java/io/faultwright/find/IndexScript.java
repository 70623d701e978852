package io.faultwright.find;

import io.faultwright.json.Json;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;

/**
 * Writes an index as a script of one call. Words stand in one text, sorted; their entries in
 * another, in the same order: for each the number of the entry times four plus the place of the
 * word, as the difference from the one before, to the base 36.
 */
final class IndexScript {
  private static final int PLACES = Weight.values().length;
  private static final int BASE = 36;

  private final SearchIndex index;
  private final SortedMap<String, String> words;

  IndexScript(SearchIndex index, SortedMap<String, String> words) {
    this.index = index;
    this.words = words;
  }

  String text() {
    return "faultwright.index({\n\"words\":"
        + words.entrySet().stream()
            .map(word -> Json.text(word.getKey()) + ":" + Json.text(word.getValue()))
            .collect(Collectors.joining(",", "{", "}"))
        + ",\n\"families\":"
        + texts(index.families())
        + ",\n\"entries\":[\n"
        + index.entries().stream().map(this::entry).collect(Collectors.joining(",\n"))
        + "],\n\"synonyms\":[\n"
        + index.synonyms().entrySet().stream()
            .map(IndexScript::synonym)
            .collect(Collectors.joining(",\n"))
        + "],\n\"terms\":"
        + Json.text(String.join(" ", index.postings().keySet()))
        + ",\n\"postings\":"
        + Json.text(
            index.postings().values().stream()
                .map(IndexScript::postings)
                .collect(Collectors.joining(" ")))
        + "});\n";
  }

  private String entry(Entry entry) {
    String families =
        entry.families().isEmpty()
            ? ""
            : entry.families().stream()
                .map(family -> String.valueOf(index.families().indexOf(family)))
                .collect(Collectors.joining(",", ",[", "]"));
    return "["
        + Json.text(entry.kind().name().toLowerCase(Locale.ROOT))
        + ","
        + Json.text(entry.title())
        + ","
        + Json.text(entry.context())
        + ","
        + Json.text(entry.href())
        + families
        + "]";
  }

  private static String synonym(Map.Entry<String, List<Integer>> synonym) {
    return "[" + Json.text(synonym.getKey()) + "," + synonym.getValue().toString() + "]";
  }

  private static String texts(List<String> texts) {
    return texts.stream().map(Json::text).collect(Collectors.joining(",", "[", "]"));
  }

  private static String postings(SortedMap<Integer, Weight> entries) {
    StringBuilder out = new StringBuilder();
    int before = 0;
    for (Map.Entry<Integer, Weight> entry : entries.entrySet()) {
      int code = entry.getKey() * PLACES + entry.getValue().ordinal();
      out.append(out.isEmpty() ? "" : ",").append(Integer.toString(code - before, BASE));
      before = code;
    }
    return out.toString();
  }
}
