package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The names of one kind within one sequence, such as its phases. */
final class SequenceNames {
  private final String noun;
  private final Problems problems;
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  /**
   * @param noun what such a thing is called in messages
   */
  SequenceNames(String noun, List<Entry> written, Problems problems) {
    this.noun = noun;
    this.problems = problems;
    written.forEach(this::add);
  }

  private void add(Entry entry) {
    Ids.checkName("the id of a " + noun, entry.key(), problems);
    entries.put(entry.name(), entry);
  }

  /** Reports names that stand among others too, where either could be meant. */
  void apartFrom(SequenceNames others) {
    entries.forEach(
        (name, entry) -> {
          if (others.entries.containsKey(name)) {
            problems.add(
                new Problem(
                    List.of(entry.key().place(), others.entries.get(name).key().place()),
                    Words.quoted(name) + " is a " + noun + " and a " + others.noun + " at once",
                    "rename one of the two"));
          }
        });
  }

  Set<String> all() {
    return Collections.unmodifiableSet(entries.keySet());
  }

  boolean known(String name) {
    return entries.containsKey(name);
  }

  /** Every one of them, read, in the written order. */
  <T> List<T> each(Function<Definition, T> resolver) {
    return entries.values().stream().map(this::definition).map(resolver).toList();
  }

  private Definition definition(Entry entry) {
    return new Definition(noun + " " + Words.quoted(entry.name()), entry.key(), entry.value());
  }

  /** The name a text stands for; reports one that is not known. */
  String reference(Scalar written) {
    return reference(written, written.text().strip());
  }

  /** As above, where the name is a part of the text. */
  String reference(Scalar written, String name) {
    if (!known(name)) {
      problems.add(
          written.place(),
          "unknown " + noun + " " + Words.quoted(name),
          entries.isEmpty()
              ? "the sequence has no " + noun + " yet"
              : NearMatch.help(name, entries.keySet()));
    }
    return name;
  }

  List<String> references(List<Scalar> written) {
    return written.stream().map(this::reference).toList();
  }
}
