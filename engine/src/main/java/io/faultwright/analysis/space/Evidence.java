package io.faultwright.analysis.space;

import io.faultwright.finding.Finding;
import io.faultwright.finding.RegionTest;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Adds region, witness and share to findings about one symptom. */
public final class Evidence {
  /** Boxes among which the largest is looked for. */
  private static final int FEW = 16;

  private final SymptomSpace symptom;
  private final Diagrams diagrams;
  private final Witness witness;
  private final BoxWords words;

  public Evidence(SymptomSpace symptom) {
    this.symptom = symptom;
    this.diagrams = symptom.space().diagrams();
    this.witness = new Witness(symptom.space());
    this.words = new BoxWords(symptom.space(), symptom.possible());
  }

  /** The finding with a box of its situations; the witness lies in the box. */
  public Finding show(Finding finding, int situations, Box box) {
    int inside = diagrams.and(situations, diagrams.box(box.array()));
    return finding.shownBy(
        witness.of(inside), words.tests(box), Optional.of(symptom.share(inside)));
  }

  /** The finding with all its situations; the region is the largest box of them. */
  public Finding show(Finding finding, int situations) {
    Box largest = new Regions(symptom.space()).cover(situations, symptom.possible(), FEW).get(0);
    return finding.shownBy(
        witness.of(situations), words.tests(largest), Optional.of(symptom.share(situations)));
  }

  /** The finding with situations that no single box describes. */
  public Finding showAll(Finding finding, int situations) {
    return finding.shownBy(
        witness.of(situations), List.of(), Optional.of(symptom.share(situations)));
  }

  /** A box in words, for messages. */
  public String words(Box box) {
    return words(words.tests(box));
  }

  /** Tests in words, for messages. */
  public static String words(List<RegionTest> tests) {
    return tests.isEmpty()
        ? "in every situation"
        : tests.stream()
            .map(test -> "`" + test.reading() + ": " + test.accepts() + "`")
            .collect(Collectors.joining(" and ", "where ", ""));
  }
}
