package io.faultwright.pipeline;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.run.Note;
import io.faultwright.run.Runner;
import io.faultwright.run.Status;
import io.faultwright.run.Trace;
import java.util.List;

/**
 * Runs the witness of every finding through Drools, which must see the same. The analyses reason
 * about sets of situations on their own, so two independent judges agree on each finding.
 */
final class Replay {
  private final KnowledgeBase kb;
  private final Runner runner;
  private final ChartReplay charts;
  private final SequenceReplay sequences;

  Replay(KnowledgeBase kb, Runner runner) {
    this.kb = kb;
    this.runner = runner;
    this.charts = new ChartReplay(kb, runner);
    this.sequences = new SequenceReplay(kb);
  }

  /**
   * The findings, those with a witness about rules confirmed.
   *
   * @throws InternalDisagreement where Drools sees something else
   */
  List<Finding> confirm(List<Finding> findings) {
    return findings.stream().map(this::confirm).toList();
  }

  private Finding confirm(Finding finding) {
    if (finding.witness().isEmpty() || finding.kind() == FindingKind.OVERLAPPING_LIMITS) {
      return finding;
    }
    Situation witness = finding.witness().get();
    if (!agrees(finding, witness)) {
      throw new InternalDisagreement(
          finding.kind().slug()
              + " \""
              + finding.message()
              + "\" is not what comes out for "
              + witness);
    }
    return finding.confirmed();
  }

  private boolean agrees(Finding finding, Situation witness) {
    return finding.course().isPresent()
        ? sequences.agrees(finding, witness)
        : seenByDrools(finding, witness);
  }

  private boolean seenByDrools(Finding finding, Situation witness) {
    return switch (finding.kind()) {
      case GAP -> isUnanswered(run(finding, witness));
      case LIMITS_MISSING -> lacksLimits(run(finding, witness));
      case CONTRADICTION -> contradicts(finding, run(finding, witness));
      case SUBSUMED_RULE, DUPLICATE_RULE -> fires(finding, run(finding, witness));
      case CIRCULAR_REFERRAL -> refers(run(finding, witness));
      case AMBIGUOUS_SYMPTOMS -> recognised(witness) > 1;
      case UNRECOGNISED_COMPLAINT -> recognised(witness) == 0;
      case CHART_DIFFERS, CHART_ANSWER_MISSING, CHART_ANSWERS_OVERLAP, CHART_LOOP ->
          charts.agrees(finding, witness);
      default -> true;
    };
  }

  private Trace run(Finding finding, Situation witness) {
    return runner.run(finding.symptom().orElseThrow(), witness);
  }

  private static boolean isUnanswered(Trace trace) {
    return trace.status().worked() && trace.answers().isEmpty() && trace.next().isEmpty();
  }

  private static boolean lacksLimits(Trace trace) {
    return trace.notes().stream().anyMatch(Note.LimitsMissing.class::isInstance);
  }

  private static boolean contradicts(Finding finding, Trace trace) {
    return trace.contradictory() && fires(finding, trace);
  }

  private static boolean fires(Finding finding, Trace trace) {
    return trace.fired().containsAll(finding.rules());
  }

  private static boolean refers(Trace trace) {
    return trace.answers().stream().anyMatch(Answer.OfReferral.class::isInstance);
  }

  private long recognised(Situation witness) {
    return kb.symptoms().keySet().stream()
        .map(symptom -> runner.verdict(symptom, witness).status())
        .filter(status -> status != Status.NOT_THIS_SYMPTOM && status != Status.DOES_NOT_APPLY)
        .count();
  }
}
