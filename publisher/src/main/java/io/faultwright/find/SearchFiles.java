package io.faultwright.find;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Link;
import io.faultwright.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** The two files behind the page for searching. */
public final class SearchFiles {
  private SearchFiles() {}

  /** The script, the same for every handbook. */
  public static String script() {
    try (InputStream in = SearchFiles.class.getResourceAsStream("search.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The index of a handbook, as a call that hands it to the script.
   *
   * @param refrigerants pages of refrigerants
   */
  public static String index(KnowledgeBase kb, Collection<Link> refrigerants) {
    return words(Words.of(kb.handbook().language()).calledFor(script()))
        + new IndexScript(SearchIndex.of(kb, refrigerants)).text();
  }

  /** What the script says in the language of the handbook; nothing in English. */
  private static String words(SortedMap<String, String> words) {
    return words.isEmpty()
        ? ""
        : words.entrySet().stream()
            .map(word -> Json.text(word.getKey()) + ":" + Json.text(word.getValue()))
            .collect(
                Collectors.joining(
                    ",\n", "(window.faultwright = window.faultwright || {}).words = {\n", "};\n"));
  }
}
