package io.faultwright.pipeline;

import io.faultwright.analysis.Analyses;
import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Share;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.report.ChartSummary;
import io.faultwright.report.SymptomSummary;
import io.faultwright.report.SymptomSummary.Proof;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * What the analyses say about one symptom.
 *
 * @param findings what they found
 * @param summary what they proved
 * @param charts what they proved about its authored charts
 */
record SymptomCheck(List<Finding> findings, SymptomSummary summary, List<ChartSummary> charts) {
  /** Where nothing is possible, a proof would be about nothing. */
  private static final Set<FindingKind> UNANSWERED =
      EnumSet.of(FindingKind.GAP, FindingKind.LIMITS_MISSING, FindingKind.EMPTY_NEVER);

  private static final Set<FindingKind> CONTRADICTED =
      EnumSet.of(FindingKind.CONTRADICTION, FindingKind.EMPTY_NEVER);

  /** Looks at every possible situation of a symptom, as far as the time allows. */
  static SymptomCheck of(KnowledgeBase kb, Symptom symptom, Deadline deadline) {
    try {
      return of(symptom, SymptomSpace.of(kb, symptom, deadline))
          .with(charts(kb, symptom, deadline));
    } catch (OutOfTime late) {
      return notComputed(kb, symptom);
    }
  }

  private static List<ChartCheck> charts(KnowledgeBase kb, Symptom symptom, Deadline deadline) {
    return kb.charts(symptom.id()).stream()
        .map(chart -> ChartCheck.of(kb, chart, deadline))
        .toList();
  }

  private SymptomCheck with(List<ChartCheck> checks) {
    List<Finding> all = new ArrayList<>(findings);
    checks.forEach(check -> all.addAll(check.findings()));
    return new SymptomCheck(all, summary, checks.stream().map(ChartCheck::summary).toList());
  }

  private static SymptomCheck of(Symptom symptom, SymptomSpace space) {
    Analyses.Looked looked = Analyses.of(space);
    SymptomSummary summary =
        new SymptomSummary(
            symptom.id(),
            symptom.rules().size(),
            proved(looked, UNANSWERED),
            proved(looked, CONTRADICTED),
            looked.open().isEmpty() ? Proof.EXACT : Proof.PARTIAL,
            inTime(() -> GapAnalysis.share(space)),
            inTime(() -> ContradictionAnalysis.share(space)),
            inTime(() -> escalated(space)));
    return new SymptomCheck(looked.findings(), summary, List.of());
  }

  /** True and false where that is sure; absent where the time was not enough. */
  private static Optional<Boolean> proved(Analyses.Looked looked, Set<FindingKind> kinds) {
    boolean none = none(looked.findings(), kinds);
    boolean sure = !none || Collections.disjoint(looked.open(), kinds);
    return Optional.of(none).filter(known -> sure);
  }

  private static Optional<Share> inTime(Supplier<Share> share) {
    try {
      return Optional.of(share.get());
    } catch (OutOfTime late) {
      return Optional.empty();
    }
  }

  /** Time ran out before anything was known. */
  static SymptomCheck notComputed(KnowledgeBase kb, Symptom symptom) {
    SymptomSummary summary =
        new SymptomSummary(
            symptom.id(),
            symptom.rules().size(),
            Optional.empty(),
            Optional.empty(),
            Proof.NOT_COMPUTED,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new SymptomCheck(List.of(), summary, List.of())
        .with(kb.charts(symptom.id()).stream().map(ChartCheck::notComputed).toList());
  }

  private static boolean none(List<Finding> findings, Set<FindingKind> kinds) {
    return findings.stream().noneMatch(finding -> kinds.contains(finding.kind()));
  }

  /** The share of situations in which the only answer is to ask somebody. */
  private static Share escalated(SymptomSpace space) {
    Map<Boolean, List<String>> answering =
        space.symptom().rules().values().stream()
            .filter(rule -> !rule.conclusion().answers().isEmpty())
            .collect(
                Collectors.partitioningBy(
                    SymptomCheck::onlyEscalates,
                    Collectors.mapping(Rule::id, Collectors.toList())));
    int escalated =
        answering.get(true).stream()
            .map(space::firing)
            .reduce(Diagrams.NONE, space.space().diagrams()::or);
    return space.share(space.without(escalated, answering.get(false)));
  }

  private static boolean onlyEscalates(Rule rule) {
    return rule.conclusion().answers().stream().allMatch(Answer.OfEscalation.class::isInstance);
  }
}
