package io.faultwright.model;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is said in other words: by the people who call, and in other languages.
 *
 * @param synonyms what people say for things of the handbook, by that text
 * @param catalogues translations of the texts, by language
 */
public record Wordbook(
    SortedMap<String, Synonym> synonyms, SortedMap<String, Catalogue> catalogues) {
  /** Nothing in other words. */
  public static final Wordbook EMPTY = new Wordbook(new TreeMap<>(), new TreeMap<>());

  public Wordbook {
    synonyms = Sorted.copy(synonyms);
    catalogues = Sorted.copy(catalogues);
  }

  /** Without synonyms, and with the translations into one language only. */
  Wordbook of(String language) {
    SortedMap<String, Catalogue> one = new TreeMap<>(catalogues);
    one.keySet().retainAll(List.of(language));
    return new Wordbook(new TreeMap<>(), one);
  }

  /** The translations into a language. */
  public Optional<Catalogue> catalogue(String language) {
    return Optional.ofNullable(catalogues.get(language));
  }
}
