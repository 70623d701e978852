package io.faultwright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.Watch;
import io.faultwright.report.SymptomSummary;
import io.faultwright.syntax.FolderReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is timed is right before it is timed. */
class PaceTest {
  /** Every fault, the escalation, and what is asked back. */
  @Test
  void handWrittenJudgesLikeTheRules() {
    assertEquals(29, Pace.of(20_000).requireEqual());
  }

  @Test
  void handbookHasNoGapAndNoContradiction() {
    List<SymptomSummary> symptoms =
        new Pipeline(Scope.ALL, Watch.NOBODY)
            .check(FolderReader.read(Pace.HANDBOOK))
            .report()
            .symptoms();
    assertEquals(Optional.of(true), symptoms.get(0).gapFree());
    assertEquals(Optional.of(true), symptoms.get(0).contradictionFree());
  }
}
