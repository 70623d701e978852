package io.faultwright.pipeline;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOffs;
import io.faultwright.report.CheckReport;
import java.util.List;

/**
 * A knowledge base with what checking it found.
 *
 * @param knowledge the knowledge base
 * @param report what was found
 * @param signOffs what is signed
 */
public record Checked(KnowledgeBase knowledge, CheckReport report, SignOffs signOffs) {
  /** The same with further findings. */
  Checked with(List<Finding> further) {
    return new Checked(knowledge, report.with(further), signOffs);
  }
}
