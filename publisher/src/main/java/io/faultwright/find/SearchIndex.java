package io.faultwright.find;

import io.faultwright.model.Synonym;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Everything that can be found, and the words it is found by.
 *
 * @param families ids of the families, sorted
 * @param entries what can be found, in a fixed order
 * @param synonyms what people say, with the numbers of the entries they mean
 * @param postings for each word the numbers of the entries it stands in, with the best place
 */
record SearchIndex(
    List<String> families,
    List<Entry> entries,
    SortedMap<String, List<Integer>> synonyms,
    SortedMap<String, SortedMap<Integer, Weight>> postings) {
  SearchIndex {
    families = List.copyOf(families);
    entries = List.copyOf(entries);
    synonyms = Collections.unmodifiableSortedMap(new TreeMap<>(synonyms));
    postings = Collections.unmodifiableSortedMap(new TreeMap<>(postings));
  }

  /** The index of what can be found. */
  static SearchIndex of(Findable findable) {
    List<Source> sources = findable.sources();
    List<Entry> entries = sources.stream().map(Source::entry).toList();
    SortedMap<String, List<Integer>> meant = meant(findable.synonyms(), entries);
    Postings postings = new Postings();
    IntStream.range(0, sources.size()).forEach(i -> postings.add(i, sources.get(i)));
    meant.forEach(
        (phrase, numbers) -> numbers.forEach(i -> postings.add(i, phrase, Weight.SYNONYM)));
    return new SearchIndex(findable.families(), entries, meant, postings.all());
  }

  private static SortedMap<String, List<Integer>> meant(
      SortedMap<String, Synonym> synonyms, List<Entry> entries) {
    SortedMap<String, List<Integer>> meant = new TreeMap<>();
    synonyms.forEach((text, synonym) -> meant.put(text, numbers(entries, synonym.ids())));
    return meant;
  }

  private static List<Integer> numbers(List<Entry> entries, SortedSet<String> ids) {
    return IntStream.range(0, entries.size())
        .filter(i -> ids.contains(entries.get(i).id()))
        .boxed()
        .toList();
  }
}
