package io.faultwright.report;

import io.faultwright.model.KnowledgeBase;

/** What the rules say of what a log tells, for people. */
public final class LogDiagnosisText {
  private final SituationText situations;
  private final TraceText traces;

  public LogDiagnosisText(KnowledgeBase kb, Ink ink) {
    this.situations = new SituationText(kb);
    this.traces = new TraceText(kb, ink);
  }

  /** What was known, and what follows. */
  public String write(CaseRun run) {
    return Block.of("known", situations.lines(run.recorded().given()))
        + "\n"
        + traces.run(run, false).stripTrailing()
        + "\n";
  }
}
