package io.faultwright.page;

import io.faultwright.finding.Finding;
import io.faultwright.finding.Severity;
import io.faultwright.page.FindingsSection.Item;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Locale;

/** What the checking found, for drafts. */
final class FindingsSections {
  private final Desk desk;
  private final SituationFacts situations;

  FindingsSections(Desk desk) {
    this.desk = desk;
    this.situations = new SituationFacts(desk.kb(), desk.words());
  }

  FindingsSection of(List<Finding> findings) {
    return new FindingsSection(
        (int) findings.stream().filter(finding -> severity(finding) == Severity.ERROR).count(),
        findings.stream().sorted(Finding.ORDER).map(this::item).toList());
  }

  private static Severity severity(Finding finding) {
    return finding.kind().severity();
  }

  private Item item(Finding finding) {
    return new Item(
        severity(finding).name().toLowerCase(Locale.ROOT),
        finding.kind().slug(),
        finding.symptom().stream()
            .filter(desk.kb().symptoms()::containsKey)
            .map(desk.links()::symptom)
            .toList(),
        finding.message(),
        finding.help(),
        finding.places().stream().map(Place::toString).toList(),
        finding.region().stream()
            .map(test -> new Fact(desk.words().subject(test.reading()), test.accepts()))
            .toList(),
        finding.witness().map(situations::of).orElse(List.of()));
  }
}
