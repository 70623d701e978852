package io.faultwright.model;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which sequences of operation have to do with a thing: those that mention it, and those that it
 * mentions. Several threads may use one.
 */
public final class SequencesAbout {
  private final SortedMap<String, Sequence> sequences;
  private final SortedMap<String, Set<String>> mentioned = new TreeMap<>();

  public SequencesAbout(SortedMap<String, Sequence> sequences) {
    this.sequences = Sorted.copy(sequences);
    this.sequences.forEach((id, one) -> mentioned.put(id, Mentions.in(one)));
  }

  /** The sequences of a thing, by their ids. */
  public List<Sequence> of(String id, Object thing) {
    if (sequences.isEmpty()) {
      return List.of();
    }
    Set<String> named = Mentions.in(thing);
    return sequences.values().stream()
        .filter(one -> named.contains(one.id()) || mentioned.get(one.id()).contains(id))
        .toList();
  }
}
