package io.faultwright.find;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;

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
   * @param words the built-in texts of the script in the language of the handbook, by the English
   *     ones; those left out stay English
   */
  public static String index(Findable findable, SortedMap<String, String> words) {
    return new IndexScript(SearchIndex.of(findable), words).text();
  }
}
