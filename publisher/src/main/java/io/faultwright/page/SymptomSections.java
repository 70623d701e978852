package io.faultwright.page;

import io.faultwright.model.Fault;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.page.Target.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Stream;

/** Complaints with all that is needed to work them. */
final class SymptomSections {
  private final Desk desk;
  private final boolean cards;

  /**
   * @param cards whether there is a pocket card of each symptom to lead to
   */
  SymptomSections(Desk desk, boolean cards) {
    this.desk = desk;
    this.cards = cards;
  }

  SymptomSection of(Symptom symptom, List<ChartFigure> charts) {
    String anchor = new Target(Kind.SYMPTOM, symptom.id()).anchor();
    Clauses clauses = new Clauses(desk);
    List<FirstItem> first = symptom.first().stream().map(this::first).toList();
    List<NeverItem> nevers = nevers(symptom);
    return new SymptomSection(
        anchor,
        symptom.title(),
        desk.links().own(Kind.SYMPTOM, symptom.id(), symptom.title()),
        symptom.about(),
        clauses.of(symptom.applies()),
        clauses.of(symptom.recognise()),
        cautions(symptom),
        first,
        charts,
        new RuleItems(desk, symptom).all(),
        nevers,
        readings(symptom).stream().map(new ReadingSections(desk)::of).toList(),
        faults(symptom).stream().map(new FaultSections(desk)::of).toList(),
        desk.links().guide(symptom.guide()),
        jumps(anchor, !charts.isEmpty(), symptom));
  }

  private FirstItem first(Symptom.First first) {
    return new FirstItem(
        new Clauses(desk).of(first.when()), desk.links().symptom(first.otherwise()));
  }

  private List<CautionPanel> cautions(Symptom symptom) {
    return new Cautions(desk)
        .of(readings(symptom).stream().flatMap(reading -> reading.cautions().stream()).toList());
  }

  private List<Reading> readings(Symptom symptom) {
    return ReadingSections.easiestFirst(
        desk.uses().readingsOf(symptom.id()).stream().map(desk.kb().readings()::get).toList());
  }

  private List<Fault> faults(Symptom symptom) {
    return Alphabet.sorted(
        desk.uses().faultsOf(symptom.id()).stream().map(desk.kb().faults()::get).toList(),
        Fault::title);
  }

  /** Those of the symptom, and those of the whole handbook that its own readings can show. */
  private List<NeverItem> nevers(Symptom symptom) {
    SortedSet<String> readings = desk.uses().readingsOf(symptom.id());
    Subjects subjects = new Subjects(desk.kb());
    Stream<Never> general =
        desk.kb().nevers().values().stream()
            .filter(never -> readings.containsAll(subjects.of(List.of(never.when()))));
    return Stream.concat(Written.order(symptom.nevers().values(), Never::place).stream(), general)
        .map(never -> new NeverItem(new Clauses(desk).of(never.when()), never.because()))
        .toList();
  }

  private List<Link> jumps(String anchor, boolean chart, Symptom symptom) {
    List<Link> jumps = new ArrayList<>();
    jumps.add(
        new Link(
            desk.say("Guided diagnosis"),
            desk.links().page(Target.DIAGNOSIS) + "#symptom=" + UrlPath.encoded(symptom.id())));
    if (chart) {
      jumps.add(new Link(desk.say("Chart"), "#" + anchor + "-chart"));
    }
    jumps.add(new Link(desk.say("Rules"), "#" + anchor + "-rules"));
    jumps.add(new Link(desk.say("Readings"), "#" + anchor + "-readings"));
    if (!faults(symptom).isEmpty()) {
      jumps.add(new Link(desk.say("Repairs"), "#" + anchor + "-repairs"));
    }
    if (cards && Edition.withCards(desk.kb()).contains(symptom.id())) {
      jumps.add(new Link(desk.say("Pocket card"), desk.links().file(SitePaths.card(symptom.id()))));
    }
    return jumps;
  }
}
