package io.faultwright.analysis;

import io.faultwright.analysis.completeness.CautionAnalysis;
import io.faultwright.analysis.completeness.FaultAnalysis;
import io.faultwright.analysis.completeness.UnusedReadingAnalysis;
import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.gap.MissingLimitsAnalysis;
import io.faultwright.analysis.limits.OverlappingLimitsAnalysis;
import io.faultwright.analysis.recognition.RecognitionAnalysis;
import io.faultwright.analysis.redundancy.DeadRuleAnalysis;
import io.faultwright.analysis.redundancy.EmptyNeverAnalysis;
import io.faultwright.analysis.redundancy.IdleConditionAnalysis;
import io.faultwright.analysis.redundancy.InsteadOfAnalysis;
import io.faultwright.analysis.redundancy.RepeatedRuleAnalysis;
import io.faultwright.analysis.redundancy.UnlistedValueAnalysis;
import io.faultwright.analysis.referral.CircularReferralAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import java.util.List;
import java.util.function.Function;

/** The analyses there are: one line each. */
public final class Analyses {
  private static final List<Function<SymptomSpace, List<Finding>>> OF_A_SYMPTOM =
      List.of(
          EmptyNeverAnalysis::findings,
          GapAnalysis::findings,
          MissingLimitsAnalysis::findings,
          ContradictionAnalysis::findings,
          DeadRuleAnalysis::findings,
          RepeatedRuleAnalysis::findings,
          IdleConditionAnalysis::findings,
          InsteadOfAnalysis::findings,
          UnlistedValueAnalysis::findings);

  private static final List<Function<KnowledgeBase, List<Finding>>> OF_THE_WHOLE =
      List.of(
          OverlappingLimitsAnalysis::findings,
          CircularReferralAnalysis::findings,
          RecognitionAnalysis::findings,
          UnusedReadingAnalysis::findings,
          FaultAnalysis::findings,
          CautionAnalysis::findings);

  private Analyses() {}

  /** Everything found about one symptom. */
  public static List<Finding> of(SymptomSpace symptom) {
    return OF_A_SYMPTOM.stream().flatMap(analysis -> analysis.apply(symptom).stream()).toList();
  }

  /** Everything found about the knowledge base as a whole; cases have their own analysis. */
  public static List<Finding> of(KnowledgeBase knowledge) {
    return OF_THE_WHOLE.stream().flatMap(analysis -> analysis.apply(knowledge).stream()).toList();
  }
}
