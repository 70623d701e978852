package io.faultwright.analysis;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;

/** Small knowledge bases written in the rule language, and what all analyses find in them. */
public final class SmallBases {
  private static final String PREAMBLE =
      """
      handbook: { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en, disclaimer: Made up. }
      """;

  /** Readings p, q and s, faults a, b and c. */
  public static final String READINGS =
      """
      readings:
        p: { ask: Is it p, values: yes/no }
        q: { ask: Is it q, values: yes/no }
        s: { ask: Which s, values: [lo, ok, hi] }
      faults:
        a: { title: A, remedy: [Mend it.], verify: [Look.] }
        b: { title: B, remedy: [Mend it.], verify: [Look.] }
        c: { title: C, remedy: [Mend it.], verify: [Look.] }
      """;

  private SmallBases() {}

  /** What a text says, with a title page before it. */
  public static KnowledgeBase read(String yaml) {
    SourceFile file = SourceFile.of("handbook.yaml", PREAMBLE + yaml);
    return Resolver.resolve(new Sources(List.of(file)));
  }

  /** Every finding of a kind. */
  public static List<Finding> findings(FindingKind kind, String yaml) {
    KnowledgeBase kb = read(yaml);
    List<Finding> all = new ArrayList<>(Analyses.of(kb));
    for (Symptom symptom : kb.symptoms().values()) {
      all.addAll(Analyses.of(SymptomSpace.of(kb, symptom)).findings());
    }
    return all.stream().filter(finding -> finding.kind() == kind).toList();
  }

  /** The messages of every finding of a kind, sorted. */
  public static List<String> found(FindingKind kind, String yaml) {
    return findings(kind, yaml).stream().map(Finding::message).sorted().toList();
  }

  /** A symptom `x` on the readings p, q and s, given line by line. */
  public static String rules(String... lines) {
    return READINGS + "symptoms:\n  x:\n    title: X\n" + String.join("\n", lines) + "\n";
  }
}
