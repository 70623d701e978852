package io.faultwright.find;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Collects the words of entries, each with the best place it stands in. */
final class Postings {
  private final SortedMap<String, SortedMap<Integer, Weight>> all = new TreeMap<>();

  void add(int number, Source source) {
    add(number, source.entry().title(), Weight.TITLE);
    add(number, source.names(), Weight.TITLE);
    add(number, source.about(), Weight.ABOUT);
    add(number, source.texts(), Weight.TEXT);
  }

  private void add(int number, List<String> texts, Weight weight) {
    texts.forEach(text -> add(number, text, weight));
  }

  void add(int number, String text, Weight weight) {
    for (String term : Terms.of(text)) {
      all.computeIfAbsent(term, t -> new TreeMap<>())
          .merge(number, weight, (a, b) -> a.compareTo(b) < 0 ? b : a);
    }
  }

  SortedMap<String, SortedMap<Integer, Weight>> all() {
    return all;
  }
}
