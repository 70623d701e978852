package io.faultwright.pipeline;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.CheckReport;

/**
 * A knowledge base with what checking it found.
 *
 * @param knowledge the knowledge base
 * @param report what was found
 */
public record Checked(KnowledgeBase knowledge, CheckReport report) {}
