package io.faultwright.pipeline;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.model.SignOffs;
import io.faultwright.report.CheckReport;
import java.util.List;
import java.util.SortedMap;

/**
 * A knowledge base with what checking it found.
 *
 * @param knowledge the knowledge base
 * @param sessions in which it is taught, by id
 * @param report what was found
 * @param signOffs what is signed
 */
public record Checked(
    KnowledgeBase knowledge,
    SortedMap<String, Session> sessions,
    CheckReport report,
    SignOffs signOffs) {
  /** The same with further findings. */
  Checked with(List<Finding> further) {
    return new Checked(knowledge, sessions, report.with(further), signOffs);
  }
}
