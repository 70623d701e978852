package io.faultwright.analysis.change;

import io.faultwright.change.Edit;
import io.faultwright.change.Edit.Concern;
import io.faultwright.change.Edit.Passage;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every part of a knowledge base that can be written differently, by what it belongs to. */
final class Passages {
  /** One thing of the knowledge base. */
  record Thing(String kind, String id, Concern concern, Place place) implements Comparable<Thing> {
    String name() {
      return kind + " " + id;
    }

    @Override
    public int compareTo(Thing other) {
      return name().compareTo(other.name());
    }
  }

  /**
   * One part of a thing.
   *
   * @param key equal where nothing is written differently
   */
  private record Part(Concern concern, String key, Passage passage) {}

  private final SortedMap<String, Thing> things = new TreeMap<>();
  private final SortedMap<String, SortedMap<String, Part>> parts = new TreeMap<>();

  /** A thing whose parts follow. */
  Filling thing(Concern concern, String kind, String id, Place place) {
    Thing thing = new Thing(kind, id, concern, place);
    things.put(thing.name(), thing);
    parts.put(thing.name(), new TreeMap<>());
    return new Filling(thing);
  }

  /** Takes the parts of one thing. */
  final class Filling {
    private final Thing thing;

    private Filling(Thing thing) {
      this.thing = thing;
    }

    /** A part whose words are all there is to it. */
    Filling text(String field, String words) {
      return put(Concern.TEXT, field, words, words);
    }

    Filling text(String field, Optional<String> words) {
      return text(field, words.orElse(""));
    }

    Filling work(String field, String words) {
      return put(Concern.WORK, field, words, words);
    }

    Filling lines(String field, Collection<String> lines) {
      return work(field, String.join("\n", lines));
    }

    Filling work(String field, Optional<String> words) {
      return work(field, words.orElse(""));
    }

    Filling cases(String field, String words) {
      return put(Concern.CASES, field, words, words);
    }

    /** A part of the rules, which may be said in other words and mean the same. */
    Filling rules(String field, String key, String words) {
      return put(Concern.RULES, field, key, words);
    }

    Filling put(Concern concern, String field, String key, String words) {
      parts.get(thing.name()).put(field, new Part(concern, key, new Passage(words, thing.place())));
      return this;
    }
  }

  /** Things of one side only, and parts that are written differently. */
  static List<Edit> edits(Passages before, Passages after) {
    List<Edit> edits = new ArrayList<>();
    before.things.forEach(
        (name, thing) -> {
          if (after.things.containsKey(name)) {
            edits.addAll(parts(thing, before.parts.get(name), after.parts.get(name)));
          } else {
            edits.add(whole(thing, Optional.of(thing), Optional.empty()));
          }
        });
    after.things.forEach(
        (name, thing) -> {
          if (!before.things.containsKey(name)) {
            edits.add(whole(thing, Optional.empty(), Optional.of(thing)));
          }
        });
    return edits;
  }

  private static Edit whole(Thing thing, Optional<Thing> before, Optional<Thing> after) {
    Function<Thing, Passage> passage = one -> new Passage("", one.place());
    return new Edit(
        thing.concern(), thing.kind(), thing.id(), "", before.map(passage), after.map(passage));
  }

  private static List<Edit> parts(
      Thing thing, SortedMap<String, Part> before, SortedMap<String, Part> after) {
    return before.entrySet().stream()
        .filter(part -> !part.getValue().key().equals(after.get(part.getKey()).key()))
        .map(
            part -> {
              Part other = after.get(part.getKey());
              return new Edit(
                  part.getValue().concern(),
                  thing.kind(),
                  thing.id(),
                  part.getKey(),
                  Optional.of(part.getValue().passage()),
                  Optional.of(other.passage()));
            })
        .collect(Collectors.toList());
  }
}
