package io.faultwright.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What of a knowledge base belongs to one symptom: all that its proof, its charts and its card can
 * read. They are made from the excerpt and not from the whole, so that what is outside it cannot
 * change them. Several threads may use one.
 */
public final class Excerpts {
  private final KnowledgeBase kb;
  private final Named<Reading> readings;
  private final Named<LimitsTable> limits;
  private final Named<Fault> faults;
  private final Named<Caution> cautions;
  private final Named<Part> parts;
  private final Named<SetUp> setUps;
  private final Named<Symptom> symptoms;
  private final Named<Guide> guides;
  private final Set<String> ids;
  private final Map<String, SortedMap<String, Case>> cases;
  private final Map<String, SortedMap<String, Chart>> charts;
  private final Map<String, Set<String>> mentioned = new ConcurrentHashMap<>();
  private final Set<String> everywhere;

  public Excerpts(KnowledgeBase kb) {
    this.kb = kb;
    this.readings = new Named<>(kb.readings());
    this.limits = new Named<>(kb.limits());
    this.faults = new Named<>(kb.faults());
    this.cautions = new Named<>(kb.cautions());
    this.parts = new Named<>(kb.parts());
    this.setUps = new Named<>(kb.setUps());
    this.symptoms = new Named<>(kb.symptoms());
    this.guides = new Named<>(kb.guides());
    this.ids =
        Stream.concat(mentioning(), Stream.of(symptoms, guides))
            .flatMap(kind -> kind.byId().keySet().stream())
            .collect(Collectors.toUnmodifiableSet());
    this.cases = bySymptom(kb.cases(), Case::symptom);
    this.charts = bySymptom(kb.charts(), Chart::symptom);
    Set<String> names = mentions(List.of(kb.nevers(), kb.equipment(), kb.handbook()));
    names.add(Caution.FLAMMABLE_REFRIGERANT);
    follow(names);
    this.everywhere = names;
  }

  /** What they are taken from. */
  public KnowledgeBase whole() {
    return kb;
  }

  /** What charts and cards are drawn from: all but cases. */
  public KnowledgeBase forDrawing(Symptom symptom) {
    return of(symptom, kb.handbook(), new TreeMap<>(), this::showing);
  }

  /** What a proof is about, with the cases of the symptom; a new revision does not change it. */
  public KnowledgeBase forProof(Symptom symptom) {
    return of(symptom, kb.handbook().undated(), of(symptom, cases), names -> new TreeMap<>());
  }

  /** The sequences that tell how one of these faults shows. */
  private SortedMap<String, Sequence> showing(Set<String> names) {
    SortedMap<String, Sequence> chosen = new TreeMap<>(kb.sequences());
    chosen
        .values()
        .removeIf(one -> one.courses().stream().noneMatch(course -> names(course, names)));
    return chosen;
  }

  private static boolean names(Sequence.Course course, Set<String> names) {
    return course.fault().filter(names::contains).isPresent();
  }

  private KnowledgeBase of(
      Symptom symptom,
      Handbook handbook,
      SortedMap<String, Case> cases,
      Function<Set<String>, SortedMap<String, Sequence>> sequences) {
    SortedMap<String, Chart> drawn = of(symptom, charts);
    Set<String> own = mentions(List.of(symptom, drawn));
    Set<String> names = new HashSet<>(own);
    names.addAll(mentions(cases));
    follow(names);
    names.addAll(everywhere);
    return new KnowledgeBase(
        handbook,
        kb.equipment(),
        readings.among(names),
        limits.among(names),
        faults.among(names),
        symptoms(symptom, own),
        kb.nevers(),
        cases,
        cautions.among(names),
        parts.among(names),
        guides(names),
        setUps.among(names),
        drawn,
        sequences.apply(own),
        kb.wordbook().of(kb.handbook().language()));
  }

  /** The symptom, and by their titles those it mentions. */
  private SortedMap<String, Symptom> symptoms(Symptom symptom, Set<String> names) {
    SortedMap<String, Symptom> chosen = symptoms.among(names);
    chosen.replaceAll((id, other) -> other.titled());
    chosen.put(symptom.id(), symptom);
    return chosen;
  }

  private SortedMap<String, Guide> guides(Set<String> names) {
    SortedMap<String, Guide> chosen = guides.among(names);
    chosen.replaceAll((id, guide) -> guide.titled());
    return chosen;
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
    return mentioned.computeIfAbsent(name, id -> mentions(things(id)));
  }

  /** Whatever may be the name of something, however deep it stands. */
  private Set<String> mentions(Object thing) {
    Set<String> names = new HashSet<>(Mentions.in(thing));
    names.retainAll(ids);
    return names;
  }

  /** Everything of that name that mentions more. */
  private List<Object> things(String name) {
    List<Object> things = new ArrayList<>();
    mentioning()
        .filter(kind -> kind.byId().containsKey(name))
        .forEach(kind -> things.add(kind.byId().get(name)));
    return things;
  }

  private Stream<Named<?>> mentioning() {
    return Stream.of(readings, limits, faults, cautions, parts, setUps);
  }

  /** Things of one kind, to be found quickly. */
  private record Named<T>(Map<String, T> byId) {
    Named(SortedMap<String, T> all) {
      this(new HashMap<>(all));
    }

    SortedMap<String, T> among(Set<String> names) {
      SortedMap<String, T> chosen = new TreeMap<>();
      names.stream().filter(byId::containsKey).forEach(name -> chosen.put(name, byId.get(name)));
      return chosen;
    }
  }

  private static <T> Map<String, SortedMap<String, T>> bySymptom(
      SortedMap<String, T> all, Function<T, String> symptom) {
    Map<String, SortedMap<String, T>> chosen = new HashMap<>();
    all.forEach(
        (id, one) ->
            chosen.computeIfAbsent(symptom.apply(one), none -> new TreeMap<>()).put(id, one));
    return chosen;
  }

  private static <T> SortedMap<String, T> of(
      Symptom symptom, Map<String, SortedMap<String, T>> bySymptom) {
    return bySymptom.getOrDefault(symptom.id(), new TreeMap<>());
  }
}
