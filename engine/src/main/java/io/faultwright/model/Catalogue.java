package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.Optional;
import java.util.SortedMap;

/**
 * The translations of a handbook's texts into one language.
 *
 * @param language its BCP 47 tag
 * @param entries by the {@link #key} of the text that is translated
 */
public record Catalogue(String language, SortedMap<String, Entry> entries) {
  public Catalogue {
    entries = Sorted.copy(entries);
  }

  /**
   * One translated text.
   *
   * @param place where it stands
   * @param text in the language of the catalogue
   */
  public record Entry(Place place, String text) {}

  /**
   * What a text is looked up by: the text itself, in which a line break or a run of blanks is worth
   * a blank.
   */
  public static String key(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** The translation of a text. */
  public Optional<String> translation(String text) {
    return Optional.ofNullable(entries.get(key(text))).map(Entry::text);
  }
}
