package io.faultwright.report;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.SymptomChange;
import io.faultwright.finding.RegionTest;
import java.util.List;
import java.util.stream.Collectors;

/** What changed in one symptom: what all regions share is said once. */
final class SymptomChangeText {
  private final SituationText situations;
  private final Ink ink;

  SymptomChangeText(SituationText situations, Ink ink) {
    this.situations = situations;
    this.ink = ink;
  }

  String of(SymptomChange symptom) {
    List<RegionTest> shared = symptom.shared();
    return heading(symptom)
        + (shared.isEmpty() ? "" : Block.of("in all of them", lines(shared)) + "\n")
        + symptom.alike().stream()
            .map(regions -> alike(regions, shared))
            .collect(Collectors.joining())
        + (symptom.more() ? "  and more situations than can be listed here\n\n" : "");
  }

  private String heading(SymptomChange symptom) {
    return ink.strong(Columns.printable(symptom.title()))
        + " ("
        + symptom.id()
        + "): changed in "
        + Shares.words(symptom.share())
        + " of the situations that can be told apart\n\n";
  }

  /** Regions that changed in the same way. */
  private String alike(List<ChangedRegion> regions, List<RegionTest> shared) {
    ChangedRegion first = regions.get(0);
    return Block.of("before", OutcomeText.of(first.before()))
        + Block.of("now", OutcomeText.of(first.after()))
        + regions.stream().map(region -> region(region, shared)).collect(Collectors.joining())
        + "\n";
  }

  private String region(ChangedRegion region, List<RegionTest> shared) {
    List<RegionTest> equipment = without(region.equipment(), shared);
    List<RegionTest> readings = without(region.readings(), shared);
    boolean always = shared.isEmpty() && equipment.isEmpty() && readings.isEmpty();
    return Block.of("for", lines(equipment))
        + Block.of("where", always ? List.of("always") : lines(readings))
        + Block.of("for example", Columns.wrapped(situations.lines(region.witness())));
  }

  private static List<RegionTest> without(List<RegionTest> tests, List<RegionTest> shared) {
    return tests.stream().filter(test -> !shared.contains(test)).toList();
  }

  private static List<String> lines(List<RegionTest> tests) {
    return tests.stream().map(test -> test.reading() + ": " + test.accepts()).toList();
  }
}
