package io.faultwright.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/** A file of words: {@code English = other language}, one a line; {@code #} begins a comment. */
final class WordList {
  private static final String IS = " = ";

  private WordList() {}

  static SortedMap<String, String> read(String language) {
    SortedMap<String, String> words = new TreeMap<>();
    text(language)
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .forEach(line -> add(words, line));
    return words;
  }

  private static void add(SortedMap<String, String> words, String line) {
    int is = line.indexOf(IS);
    if (is < 0 || words.put(line.substring(0, is), line.substring(is + IS.length())) != null) {
      throw new IllegalStateException("a word that is not, or twice: " + line);
    }
  }

  private static String text(String language) {
    try (InputStream in = WordList.class.getResourceAsStream(language + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
