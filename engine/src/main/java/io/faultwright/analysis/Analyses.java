package io.faultwright.analysis;

import io.faultwright.analysis.chart.ChartAnalysis;
import io.faultwright.analysis.chart.ChartReport;
import io.faultwright.analysis.completeness.CautionAnalysis;
import io.faultwright.analysis.completeness.FaultAnalysis;
import io.faultwright.analysis.completeness.UnusedReadingAnalysis;
import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.gap.MissingLimitsAnalysis;
import io.faultwright.analysis.limits.NarrowLimitsAnalysis;
import io.faultwright.analysis.limits.OverlappingLimitsAnalysis;
import io.faultwright.analysis.operation.SequenceAnalysis;
import io.faultwright.analysis.recognition.RecognitionAnalysis;
import io.faultwright.analysis.redundancy.DeadRuleAnalysis;
import io.faultwright.analysis.redundancy.EmptyNeverAnalysis;
import io.faultwright.analysis.redundancy.IdleConditionAnalysis;
import io.faultwright.analysis.redundancy.InsteadOfAnalysis;
import io.faultwright.analysis.redundancy.RepeatedRuleAnalysis;
import io.faultwright.analysis.redundancy.UnlistedValueAnalysis;
import io.faultwright.analysis.referral.CircularReferralAnalysis;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.translation.TranslationAnalysis;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The analyses there are: one line each. */
public final class Analyses {
  private static final List<OfASymptom> OF_A_SYMPTOM =
      List.of(
          new OfASymptom(FindingKind.EMPTY_NEVER, EmptyNeverAnalysis::findings),
          new OfASymptom(FindingKind.GAP, GapAnalysis::findings),
          new OfASymptom(FindingKind.LIMITS_MISSING, MissingLimitsAnalysis::findings),
          new OfASymptom(FindingKind.CONTRADICTION, ContradictionAnalysis::findings),
          new OfASymptom(FindingKind.DEAD_RULE, DeadRuleAnalysis::findings),
          new OfASymptom(FindingKind.SUBSUMED_RULE, RepeatedRuleAnalysis::findings),
          new OfASymptom(FindingKind.IDLE_CONDITION, IdleConditionAnalysis::findings),
          new OfASymptom(FindingKind.INSTEAD_OF_WITHOUT_EFFECT, InsteadOfAnalysis::findings),
          new OfASymptom(FindingKind.UNLISTED_VALUE, UnlistedValueAnalysis::findings));

  private static final List<Function<KnowledgeBase, List<Finding>>> OF_THE_WHOLE =
      List.of(
          OverlappingLimitsAnalysis::findings,
          NarrowLimitsAnalysis::findings,
          CircularReferralAnalysis::findings,
          RecognitionAnalysis::findings,
          UnusedReadingAnalysis::findings,
          FaultAnalysis::findings,
          CautionAnalysis::findings,
          SequenceAnalysis::findings,
          TranslationAnalysis::findings);

  private Analyses() {}

  private record OfASymptom(FindingKind kind, Function<SymptomSpace, List<Finding>> findings) {}

  /**
   * What was looked at before the time was over.
   *
   * @param findings what was found
   * @param open kinds of findings that were not looked for to the end
   */
  public record Looked(List<Finding> findings, Set<FindingKind> open) {
    public Looked {
      findings = List.copyOf(findings);
      open = Set.copyOf(open);
    }
  }

  /** Everything found about one symptom, each analysis as far as its time allows. */
  public static Looked of(SymptomSpace symptom) {
    List<Finding> findings = new ArrayList<>();
    Set<FindingKind> open = EnumSet.noneOf(FindingKind.class);
    for (OfASymptom analysis : OF_A_SYMPTOM) {
      try {
        findings.addAll(analysis.findings().apply(symptom));
      } catch (OutOfTime late) {
        open.add(analysis.kind());
      }
    }
    if (open.contains(FindingKind.GAP)) {
      findings.addAll(GapAnalysis.foundInTime(symptom));
    }
    return new Looked(findings, open);
  }

  /**
   * Everything found about one authored chart.
   *
   * @param deadline after which it throws {@link OutOfTime}
   */
  public static ChartReport of(KnowledgeBase knowledge, Chart chart, Deadline deadline) {
    return ChartAnalysis.of(knowledge, chart, deadline);
  }

  /** Everything found about the knowledge base as a whole; cases have their own analysis. */
  public static List<Finding> of(KnowledgeBase knowledge) {
    return OF_THE_WHOLE.parallelStream()
        .flatMap(analysis -> analysis.apply(knowledge).stream())
        .toList();
  }
}
