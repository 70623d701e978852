package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A thing of the knowledge base that a person can sign.
 *
 * @param kind what it is
 * @param id its id; of a rule with that of its symptom before it, as in {@code
 *     room-too-warm/stands}
 */
public record Signed(SignedKind kind, String id) implements Comparable<Signed> {
  private static final Comparator<Signed> ORDER =
      Comparator.comparing(Signed::kind).thenComparing(Signed::id);

  /** A rule of a symptom. */
  public static Signed rule(String symptom, String rule) {
    return new Signed(SignedKind.RULE, symptom + "/" + rule);
  }

  /** Everything in a knowledge base that can be signed, by kind and id. */
  public static List<Signed> all(KnowledgeBase kb) {
    List<Signed> all = new ArrayList<>();
    kb.symptoms().keySet().forEach(id -> all.add(new Signed(SignedKind.SYMPTOM, id)));
    kb.symptoms()
        .values()
        .forEach(
            symptom -> symptom.rules().keySet().forEach(id -> all.add(rule(symptom.id(), id))));
    kb.limits().keySet().forEach(id -> all.add(new Signed(SignedKind.LIMITS, id)));
    kb.charts().keySet().forEach(id -> all.add(new Signed(SignedKind.CHART, id)));
    kb.guides().keySet().forEach(id -> all.add(new Signed(SignedKind.GUIDE, id)));
    kb.sequences().keySet().forEach(id -> all.add(new Signed(SignedKind.SEQUENCE, id)));
    return all.stream().sorted().toList();
  }

  /** Where it stands; empty where the knowledge base has no such thing. */
  public Optional<Place> place(KnowledgeBase kb) {
    return switch (kind) {
      case SYMPTOM -> Optional.ofNullable(kb.symptoms().get(id)).map(Symptom::place);
      case RULE -> rule(kb).map(Rule::place);
      case LIMITS -> Optional.ofNullable(kb.limits().get(id)).map(LimitsTable::place);
      case CHART -> Optional.ofNullable(kb.charts().get(id)).map(Chart::place);
      case GUIDE -> Optional.ofNullable(kb.guides().get(id)).map(Guide::place);
      case SEQUENCE -> Optional.ofNullable(kb.sequences().get(id)).map(Sequence::place);
    };
  }

  /** The id of the symptom it is or belongs to. */
  public Optional<String> symptom(KnowledgeBase kb) {
    return switch (kind) {
      case SYMPTOM -> Optional.of(id);
      case RULE -> Optional.of(id.substring(0, Math.max(0, id.indexOf('/'))));
      case CHART -> Optional.ofNullable(kb.charts().get(id)).map(Chart::symptom);
      case LIMITS, GUIDE, SEQUENCE -> Optional.empty();
    };
  }

  /** The rule it is; empty where it is none, or the knowledge base has none such. */
  public Optional<Rule> rule(KnowledgeBase kb) {
    int slash = id.indexOf('/');
    return kind != SignedKind.RULE || slash < 0
        ? Optional.empty()
        : Optional.ofNullable(kb.symptoms().get(id.substring(0, slash)))
            .map(symptom -> symptom.rules().get(id.substring(slash + 1)));
  }

  /** For messages, as in {@code rule `room-too-warm/stands`}. */
  public String words() {
    return kind.word() + " `" + id + "`";
  }

  /** As it is written, {@code rule room-too-warm/stands}. */
  @Override
  public String toString() {
    return kind.word() + " " + id;
  }

  @Override
  public int compareTo(Signed other) {
    return ORDER.compare(this, other);
  }
}
