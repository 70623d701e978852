package io.faultwright.pipeline;

import io.faultwright.analysis.change.ChangeAnalysis;
import io.faultwright.change.Outcome;
import io.faultwright.change.Outcome.Kind;
import io.faultwright.change.SymptomChange;
import io.faultwright.model.Situation;
import io.faultwright.run.Note;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;

/** Runs the witness of every changed region through Drools, once in each revision. */
final class ChangeReplay {
  private final Runner before;
  private final Runner after;

  ChangeReplay(Runner before, Runner after) {
    this.before = before;
    this.after = after;
  }

  /**
   * What changed in a symptom, confirmed.
   *
   * @throws InternalDisagreement where Drools gives another outcome in either revision
   */
  SymptomChange confirm(ChangeAnalysis analysis) {
    SymptomChange change = analysis.change();
    return change.with(
        region -> {
          require(change, region.before(), before, analysis.asBefore(region.witness()));
          require(change, region.after(), after, analysis.asAfter(region.witness()));
          return region.confirmed();
        });
  }

  private static void require(
      SymptomChange change, Outcome expected, Runner runner, Situation witness) {
    Trace trace = runner.run(change.id(), witness);
    Outcome found = outcome(trace, expected.kind());
    if (!found.equals(expected)) {
      throw new InternalDisagreement(
          change.id() + ": " + expected + " is not what Drools sees for " + witness + ": " + found);
    }
  }

  /** What Drools saw; that a figure is missing counts only where nothing else is told. */
  private static Outcome outcome(Trace trace, Kind expected) {
    return switch (trace.status()) {
      case DOES_NOT_APPLY, UNKNOWN_SYMPTOM, NO_SUCH_EQUIPMENT -> Outcome.of(Kind.NOT_OFFERED);
      case CHECK_VALUES, TAKE_AGAIN -> Outcome.of(Kind.CANNOT_HAPPEN);
      case NOT_THIS_SYMPTOM -> Outcome.of(Kind.NOT_RECOGNISED);
      case REFERRED -> new Outcome(Kind.SENT_ELSEWHERE, trace.answers());
      case ANSWERED ->
          new Outcome(trace.contradictory() ? Kind.CONTRADICTION : Kind.ANSWERED, trace.answers());
      case ASK_FIRST, NOTHING_YET, NO_ANSWER ->
          Outcome.of(expected == Kind.NO_FIGURE && lacksFigure(trace) ? expected : Kind.UNANSWERED);
    };
  }

  private static boolean lacksFigure(Trace trace) {
    return trace.notes().stream().anyMatch(Note.LimitsMissing.class::isInstance);
  }
}
