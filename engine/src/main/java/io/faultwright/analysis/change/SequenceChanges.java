package io.faultwright.analysis.change;

import io.faultwright.analysis.change.SequenceFacts.Fact;
import io.faultwright.analysis.change.SequenceFacts.Key;
import io.faultwright.change.Edit.Passage;
import io.faultwright.change.SequenceChange;
import io.faultwright.change.SequenceChange.Part;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Finds on which machines which part of a sequence of operation is otherwise than it was. */
public final class SequenceChanges {
  /** One part of a sequence, over the machines on which it differs. */
  private static final class Difference {
    private final List<Build> builds = new ArrayList<>();
    private final Set<String> before = new LinkedHashSet<>();
    private final Set<String> after = new LinkedHashSet<>();
    private Optional<Place> was = Optional.empty();
    private Optional<Place> is = Optional.empty();

    void add(Build build, Optional<Fact> old, Optional<Fact> current) {
      builds.add(build);
      old.map(Fact::meant).ifPresent(before::add);
      current.map(Fact::meant).ifPresent(after::add);
      was = was.or(() -> old.map(Fact::place));
      is = is.or(() -> current.map(Fact::place));
    }

    SequenceChange of(String sequence, Key key) {
      return new SequenceChange(
          sequence, key.part(), key.of(), builds, passage(before, was), passage(after, is));
    }

    private static Optional<Passage> passage(Set<String> texts, Optional<Place> place) {
      return place.map(at -> new Passage(String.join("\n", texts), at));
    }
  }

  private final Sequence old;
  private final Sequence current;
  private final Map<Key, Difference> differences = new LinkedHashMap<>();

  private SequenceChanges(Sequence old, Sequence current) {
    this.old = old;
    this.current = current;
  }

  /** By sequence, each in the order of its parts; nothing for what means the same. */
  public static List<SequenceChange> between(KnowledgeBase before, KnowledgeBase after) {
    Set<String> ids = new TreeSet<>(before.sequences().keySet());
    ids.addAll(after.sequences().keySet());
    List<SequenceChange> changes = new ArrayList<>();
    for (String id : ids) {
      Optional<Sequence> old = Optional.ofNullable(before.sequences().get(id));
      Optional<Sequence> current = Optional.ofNullable(after.sequences().get(id));
      if (old.isPresent() && current.isPresent()) {
        changes.addAll(new SequenceChanges(old.get(), current.get()).changes(before, after));
      } else {
        changes.add(whole(old, current, old.isPresent() ? before : after));
      }
    }
    return changes;
  }

  private static SequenceChange whole(
      Optional<Sequence> old, Optional<Sequence> current, KnowledgeBase having) {
    Sequence only = old.or(() -> current).orElseThrow();
    List<Build> builds =
        having.equipment().builds().stream()
            .filter(build -> build.satisfies(only.applies()))
            .toList();
    return new SequenceChange(
        only.id(),
        Part.APPLIES,
        "",
        builds,
        old.map(SequenceChanges::passage),
        current.map(SequenceChanges::passage));
  }

  private static Passage passage(Sequence sequence) {
    return new Passage(sequence.title(), sequence.place());
  }

  private List<SequenceChange> changes(KnowledgeBase before, KnowledgeBase after) {
    for (Build build : after.equipment().builds()) {
      SharedEquipment.same(build, before.equipment()).ifPresent(same -> compare(same, build));
    }
    return differences.entrySet().stream()
        .map(one -> one.getValue().of(current.id(), one.getKey()))
        .sorted(Comparator.comparing(SequenceChange::part))
        .toList();
  }

  private void compare(Build before, Build after) {
    boolean did = before.satisfies(old.applies());
    boolean does = after.satisfies(current.applies());
    if (did != does) {
      difference(new Key(Part.APPLIES, ""))
          .add(after, Optional.of(works(old, did)), Optional.of(works(current, does)));
    } else if (does) {
      compare(after, SequenceFacts.of(old, before), SequenceFacts.of(current, after));
    }
  }

  private static Fact works(Sequence sequence, boolean so) {
    String text = so ? "yes" : "no";
    return new Fact(text, text, sequence.place());
  }

  private void compare(Build build, Map<Key, Fact> was, Map<Key, Fact> is) {
    Set<Key> keys = new LinkedHashSet<>(is.keySet());
    keys.addAll(was.keySet());
    for (Key key : keys) {
      Optional<Fact> before = Optional.ofNullable(was.get(key));
      Optional<Fact> after = Optional.ofNullable(is.get(key));
      if (differ(key.part(), before, after)) {
        difference(key).add(build, before, after);
      }
    }
  }

  private static boolean differ(Part part, Optional<Fact> before, Optional<Fact> after) {
    return before.isPresent() && after.isPresent()
        ? before.get().differs(after.get())
        : part.onOneSide();
  }

  private Difference difference(Key key) {
    return differences.computeIfAbsent(key, none -> new Difference());
  }
}
