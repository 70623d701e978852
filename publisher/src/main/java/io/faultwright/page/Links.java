package io.faultwright.page;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.page.Target.Kind;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.words.Words;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Links to the things of a knowledge base, by their titles. */
final class Links {
  private final KnowledgeBase kb;
  private final Addresses addresses;

  Links(KnowledgeBase kb, Addresses addresses) {
    this.kb = kb;
    this.addresses = addresses;
  }

  String href(Kind kind, String id) {
    return addresses.href(new Target(kind, id));
  }

  /** A link to the own page of something. */
  Link own(Kind kind, String id, String title) {
    return new Link(title, addresses.own(new Target(kind, id)));
  }

  String page(Target target) {
    return addresses.href(target);
  }

  String picture(String path) {
    return addresses.picture(path);
  }

  String file(String path) {
    return addresses.file(path);
  }

  Link symptom(String id) {
    return new Link(kb.symptoms().get(id).title(), href(Kind.SYMPTOM, id));
  }

  List<Link> symptoms(Collection<String> ids) {
    List<Symptom> symptoms = ids.stream().sorted().map(kb.symptoms()::get).toList();
    return Alphabet.sorted(symptoms, Symptom::title).stream()
        .map(symptom -> symptom(symptom.id()))
        .toList();
  }

  Link fault(String id) {
    return new Link(kb.faults().get(id).title(), href(Kind.FAULT, id));
  }

  Link reading(String id) {
    return new Link(kb.readings().get(id).title(), href(Kind.READING, id));
  }

  List<Link> readings(Collection<String> ids) {
    List<Reading> readings = ids.stream().sorted().map(kb.readings()::get).toList();
    return Alphabet.sorted(readings, Reading::title).stream()
        .map(reading -> reading(reading.id()))
        .toList();
  }

  Link guide(String id) {
    return new Link(kb.guides().get(id).title(), href(Kind.GUIDE, id));
  }

  List<Link> refrigerants(Collection<Refrigerant> refrigerants) {
    return refrigerants.stream()
        .map(
            one ->
                new Link(
                    RefrigerantSections.title(one, Words.of(kb.handbook().language())),
                    href(Kind.REFRIGERANT, one.id())))
        .toList();
  }

  Optional<Link> guide(Optional<String> id) {
    return id.filter(kb.guides()::containsKey).map(this::guide);
  }

  /** What a line of a condition is about: a reading or an equipment fact. */
  Link subject(String id, String title) {
    if (kb.readings().containsKey(id)) {
      return new Link(title, href(Kind.READING, id));
    }
    return kb.equipment().options().containsKey(id)
        ? new Link(title, href(Kind.OPTION, id))
        : new Link(title, addresses.href(Target.EQUIPMENT));
  }
}
