package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.pipeline.CaseRuns;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.Watch;
import io.faultwright.report.CheckText;
import io.faultwright.report.Ink;
import io.faultwright.report.ProblemText;
import io.faultwright.report.TraceText;
import io.faultwright.source.Sources;
import java.util.List;

/** What the commands print for a knowledge base. */
final class Tool {
  private final Sources sources;

  Tool(Sources sources) {
    this.sources = sources;
  }

  Checked checked() {
    return new Pipeline(Scope.ALL, Watch.NOBODY).check(sources);
  }

  /** The output of {@code check}. */
  String check() {
    Checked checked = checked();
    return new CheckText(checked.knowledge(), sources, Ink.PLAIN).write(checked.report());
  }

  /** The output of {@code check} where the knowledge base cannot be read. */
  String problems() {
    Unreadable unreadable = assertThrows(Unreadable.class, this::checked, "it can be read");
    return new ProblemText(sources, Ink.PLAIN).write(unreadable.problems());
  }

  /** The output of {@code run} for one case. */
  String run(String id, boolean explain) {
    CaseRuns runs = new CaseRuns(sources);
    return new TraceText(runs.knowledge(), Ink.PLAIN).write(runs.named(List.of(id)), explain);
  }
}
