package io.faultwright.analysis.operation;

import io.faultwright.finding.Finding;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import java.util.ArrayList;
import java.util.List;

/** Looks at everything that each sequence of operation can do, on every build that runs it. */
public final class SequenceAnalysis {
  private SequenceAnalysis() {}

  /** What is found of all sequences, each with the fewest events that show it. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    return knowledge.sequences().values().parallelStream()
        .flatMap(sequence -> of(knowledge, sequence).stream())
        .toList();
  }

  private static List<Finding> of(KnowledgeBase knowledge, Sequence sequence) {
    List<Build> builds =
        knowledge.equipment().builds().stream()
            .filter(build -> build.satisfies(sequence.applies()))
            .toList();
    return of(sequence, builds);
  }

  /**
   * What is found of a sequence.
   *
   * @param builds that run it
   */
  static List<Finding> of(Sequence sequence, List<Build> builds) {
    List<Explored> explored =
        Variant.all(sequence, builds).parallelStream().map(Explorer::explore).toList();
    List<Finding> findings = new ArrayList<>(UnclearTimes.findings(sequence, builds, explored));
    findings.addAll(NeverReached.findings(sequence, explored));
    findings.addAll(Shown.findings(explored));
    return findings;
  }
}
