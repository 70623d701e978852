package io.faultwright.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/**
 * What of a knowledge base belongs to one symptom: all that its proof, its charts and its card can
 * read. They are made from the excerpt and not from the whole, so that what is outside it cannot
 * change them. Several threads may use one.
 */
public final class Excerpts {
  private final KnowledgeBase kb;
  private final Map<String, Set<String>> mentioned = new ConcurrentHashMap<>();

  private final Set<String> everywhere;

  public Excerpts(KnowledgeBase kb) {
    this.kb = kb;
    this.everywhere = Mentions.in(List.of(kb.nevers(), kb.equipment(), kb.handbook()));
  }

  /** What they are taken from. */
  public KnowledgeBase whole() {
    return kb;
  }

  /** What charts and cards are drawn from: all but cases. */
  public KnowledgeBase forDrawing(Symptom symptom) {
    return of(symptom, kb.handbook(), new TreeMap<>());
  }

  /** What a proof is about, with the cases of the symptom; a new revision does not change it. */
  public KnowledgeBase forProof(Symptom symptom) {
    SortedMap<String, Case> cases = only(kb.cases(), one -> one.symptom().equals(symptom.id()));
    return of(symptom, kb.handbook().undated(), cases);
  }

  private KnowledgeBase of(Symptom symptom, Handbook handbook, SortedMap<String, Case> cases) {
    SortedMap<String, Chart> charts =
        only(kb.charts(), chart -> chart.symptom().equals(symptom.id()));
    Set<String> own = Mentions.in(List.of(symptom, charts));
    Set<String> names = new HashSet<>(own);
    names.addAll(Mentions.in(cases));
    names.addAll(everywhere);
    names.add(Caution.FLAMMABLE_REFRIGERANT);
    follow(names);
    return new KnowledgeBase(
        handbook,
        kb.equipment(),
        named(kb.readings(), names),
        named(kb.limits(), names),
        named(kb.faults(), names),
        symptoms(symptom, own),
        kb.nevers(),
        cases,
        named(kb.cautions(), names),
        named(kb.parts(), names),
        guides(names),
        named(kb.setUps(), names),
        charts,
        kb.wordbook().of(kb.handbook().language()));
  }

  /** The symptom, and by their titles those it mentions. */
  private SortedMap<String, Symptom> symptoms(Symptom symptom, Set<String> names) {
    SortedMap<String, Symptom> symptoms = named(kb.symptoms(), names);
    symptoms.replaceAll((id, other) -> other.titled());
    symptoms.put(symptom.id(), symptom);
    return symptoms;
  }

  private SortedMap<String, Guide> guides(Set<String> names) {
    SortedMap<String, Guide> guides = named(kb.guides(), names);
    guides.replaceAll((id, guide) -> guide.titled());
    return guides;
  }

  /** Adds what the things of those names mention, and so on. */
  private void follow(Set<String> names) {
    Deque<String> open = new ArrayDeque<>(names);
    while (!open.isEmpty()) {
      for (String next : mentionedBy(open.pop())) {
        if (names.add(next)) {
          open.push(next);
        }
      }
    }
  }

  private Set<String> mentionedBy(String name) {
    return mentioned.computeIfAbsent(name, id -> Mentions.in(things(id)));
  }

  /** Everything of that name that excerpts choose from. */
  private Collection<Object> things(String name) {
    List<Object> things = new ArrayList<>();
    for (Map<String, ?> kind :
        List.of(kb.readings(), kb.limits(), kb.faults(), kb.cautions(), kb.parts(), kb.setUps())) {
      if (kind.containsKey(name)) {
        things.add(kind.get(name));
      }
    }
    return things;
  }

  private static <T> SortedMap<String, T> named(SortedMap<String, T> all, Set<String> names) {
    SortedMap<String, T> chosen = new TreeMap<>(all);
    chosen.keySet().retainAll(names);
    return chosen;
  }

  private static <T> SortedMap<String, T> only(SortedMap<String, T> all, Predicate<T> wanted) {
    SortedMap<String, T> chosen = new TreeMap<>(all);
    chosen.values().removeIf(wanted.negate());
    return chosen;
  }
}
