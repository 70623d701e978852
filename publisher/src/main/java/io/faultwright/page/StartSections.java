package io.faultwright.page;

import io.faultwright.model.Family;
import io.faultwright.model.Handbook;
import io.faultwright.model.Symptom;
import io.faultwright.page.StartSection.Complaint;
import io.faultwright.page.StartSection.FamilyItem;
import io.faultwright.prose.Html;
import java.util.Optional;

/** The way in: by complaint and by family. */
final class StartSections {
  private final Desk desk;
  private final Edition edition;

  StartSections(Desk desk, Edition edition) {
    this.desk = desk;
    this.edition = edition;
  }

  StartSection section() {
    Handbook handbook = desk.kb().handbook();
    return new StartSection(
        new Link(desk.say("Guided diagnosis"), desk.links().page(Target.DIAGNOSIS)),
        new Link(desk.say("Search"), desk.links().page(Target.SEARCH)),
        Alphabet.sorted(desk.kb().symptoms().values(), Symptom::title).stream()
            .map(this::complaint)
            .toList(),
        Alphabet.sorted(desk.kb().equipment().families().values(), Family::title).stream()
            .map(this::family)
            .toList(),
        SequenceSections.links(desk),
        desk.links().refrigerants(desk.uses().refrigerants()),
        welcome(handbook.start()),
        edition.since().map(since -> changes(since)),
        edition.bulletin().map(told -> SitePages.bulletinLink(desk)),
        edition.releases().isEmpty() ? Optional.empty() : Optional.of(releases()),
        edition.pdf() ? Optional.of(book()) : Optional.empty(),
        handbook.disclaimer(),
        handbook.notes());
  }

  private Complaint complaint(Symptom symptom) {
    return new Complaint(
        desk.links().symptom(symptom.id()), new Clauses(desk).line(symptom.applies()));
  }

  private FamilyItem family(Family family) {
    return new FamilyItem(family.title(), family.about(), new Families(desk).symptoms(family));
  }

  private Link changes(Since since) {
    String revision = since.comparison().before().number();
    return new Link(
        desk.say("What changed since revision {0}", revision), desk.links().page(Target.CHANGES));
  }

  private Link releases() {
    return new Link(desk.say("Releases"), desk.links().page(Target.RELEASES));
  }

  private Link book() {
    return new Link(desk.say("The whole handbook as PDF"), desk.links().file(SitePaths.BOOK));
  }

  private Html welcome(Optional<String> guide) {
    return guide
        .map(desk.kb().guides()::get)
        .map(found -> new GuideSections(desk, edition.pictures().keySet()).html(found, 2))
        .orElse(Html.NONE);
  }
}
