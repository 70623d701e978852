package io.faultwright.page;

import io.faultwright.finding.Finding;
import io.faultwright.finding.Severity;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.Situation;
import io.faultwright.page.FindingsSection.Item;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the checking found, for drafts. */
final class FindingsSections {
  private final Desk desk;

  FindingsSections(Desk desk) {
    this.desk = desk;
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
        finding.witness().map(this::facts).orElse(List.of()));
  }

  private List<Fact> facts(Situation situation) {
    return Stream.concat(
            situation.equipment().entrySet().stream()
                .map(e -> fact(e.getKey(), desk.words().value(e.getKey(), e.getValue()))),
            new DerivedValues(desk.kb())
                .complete(situation).readings().entrySet().stream()
                    .map(e -> fact(e.getKey(), desk.words().value(e.getKey(), e.getValue()))))
        .toList();
  }

  private Fact fact(String subject, String value) {
    return new Fact(desk.words().subject(subject), value);
  }
}
