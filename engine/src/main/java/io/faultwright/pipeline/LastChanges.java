package io.faultwright.pipeline;

import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.release.Meanings;
import io.faultwright.resolve.Resolver;
import io.faultwright.review.LastChange;
import io.faultwright.review.LastChange.Commit;
import io.faultwright.review.LastChange.State;
import io.faultwright.revision.History;
import io.faultwright.revision.Moment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * When the meaning of symptoms and rules last changed: the history is followed back from the commit
 * checked out to a parent of the same meaning, as long as there is one. Translations are left
 * aside: they change no rule.
 */
public final class LastChanges {
  /** States of the folder that are read; each takes as long as reading the knowledge base. */
  private static final int MOST = 300;

  private final History history;
  private final SortedMap<Signed, SortedMap<String, String>> now;
  private final Map<String, Moment> moments = new HashMap<>();
  private final Optional<Moment> head;
  private final Map<String, Optional<SortedMap<Signed, SortedMap<String, String>>>> states =
      new HashMap<>();
  private final Stop stop;

  /**
   * Changes up to a knowledge base as it is now.
   *
   * @throws Unreadable where its repository cannot be read
   */
  public LastChanges(History history, KnowledgeBase kb, Stop stop) {
    this.history = history;
    this.stop = stop;
    this.now = meanings(kb);
    List<Moment> all = history.moments();
    all.forEach(moment -> moments.put(moment.id(), moment));
    this.head = all.stream().findFirst();
  }

  private static SortedMap<Signed, SortedMap<String, String>> meanings(KnowledgeBase kb) {
    Meanings meanings = new Meanings(kb.untranslated(), new TreeMap<>());
    SortedMap<Signed, SortedMap<String, String>> all = new TreeMap<>();
    Signed.all(kb).stream()
        .filter(one -> one.kind() == SignedKind.RULE || one.kind() == SignedKind.SYMPTOM)
        .forEach(one -> all.put(one, meanings.of(one).shortHashes()));
    return all;
  }

  /** The last change of a symptom or a rule. */
  public LastChange of(Signed signed) {
    if (head.isEmpty()) {
      return LastChange.NO_HISTORY;
    }
    SortedMap<String, String> meaning = now.get(signed);
    return like(head.get(), signed, meaning) == Likeness.SAME
        ? from(head.get(), signed, meaning)
        : LastChange.NOT_COMMITTED;
  }

  /** How a state compares; one that this version cannot read says nothing. */
  private enum Likeness {
    SAME,
    OTHER,
    UNKNOWN
  }

  private LastChange from(Moment start, Signed signed, SortedMap<String, String> meaning) {
    Moment same = start;
    Moment at = start;
    while (true) {
      if (late(at)) {
        return new LastChange(State.BEFORE, Optional.of(commit(same)), List.of());
      }
      Optional<Moment> next = before(at, signed, meaning);
      if (next.isEmpty()) {
        return new LastChange(
            State.COMMITTED, Optional.of(commit(same)), changed(same, signed, meaning));
      }
      at = next.get();
      same = like(at, signed, meaning) == Likeness.SAME ? at : same;
    }
  }

  /** Whether looking at the parents would be more than is looked at. */
  private boolean late(Moment at) {
    boolean known = parents(at).stream().allMatch(parent -> isKnown(parent));
    return !known && (states.size() >= MOST || stopped());
  }

  private boolean isKnown(Moment moment) {
    return moment.state().isEmpty() || states.containsKey(moment.state());
  }

  private boolean stopped() {
    try {
      stop.deadline().check();
      return false;
    } catch (OutOfTime over) {
      return true;
    }
  }

  private List<Moment> parents(Moment at) {
    return at.parents().stream().map(moments::get).toList();
  }

  /** A parent of the same meaning, else one that cannot be read. */
  private Optional<Moment> before(Moment at, Signed signed, SortedMap<String, String> meaning) {
    List<Moment> parents = parents(at);
    return parents.stream()
        .filter(parent -> like(parent, signed, meaning) == Likeness.SAME)
        .findFirst()
        .or(
            () ->
                parents.stream()
                    .filter(parent -> like(parent, signed, meaning) == Likeness.UNKNOWN)
                    .findFirst());
  }

  private Likeness like(Moment moment, Signed signed, SortedMap<String, String> meaning) {
    if (moment.state().isEmpty()) {
      return Likeness.OTHER;
    }
    return state(moment)
        .map(all -> meaning.equals(all.get(signed)) ? Likeness.SAME : Likeness.OTHER)
        .orElse(Likeness.UNKNOWN);
  }

  private Optional<SortedMap<Signed, SortedMap<String, String>>> state(Moment moment) {
    return states.computeIfAbsent(moment.state(), none -> read(moment));
  }

  private Optional<SortedMap<Signed, SortedMap<String, String>>> read(Moment moment) {
    try {
      return Optional.of(meanings(Resolver.resolve(history.read(moment.id()))));
    } catch (Unreadable older) {
      return Optional.empty();
    }
  }

  /** Names of the parts that are not what they were before; none where it was not there. */
  private List<String> changed(Moment at, Signed signed, SortedMap<String, String> meaning) {
    Optional<SortedMap<String, String>> before =
        parents(at).stream()
            .filter(parent -> !parent.state().isEmpty())
            .flatMap(parent -> state(parent).stream())
            .flatMap(all -> Optional.ofNullable(all.get(signed)).stream())
            .findFirst();
    List<String> changed = new ArrayList<>();
    if (before.isPresent()) {
      SortedSet<String> names = new TreeSet<>(meaning.keySet());
      names.addAll(before.get().keySet());
      names.stream()
          .filter(
              name ->
                  !Optional.ofNullable(meaning.get(name))
                      .equals(Optional.ofNullable(before.get().get(name))))
          .forEach(changed::add);
    }
    return changed;
  }

  private static Commit commit(Moment moment) {
    return new Commit(moment.brief(), moment.date(), moment.summary());
  }
}
