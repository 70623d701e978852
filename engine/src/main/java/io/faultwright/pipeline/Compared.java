package io.faultwright.pipeline;

import io.faultwright.change.Comparison;
import io.faultwright.model.KnowledgeBase;

/**
 * Two revisions with what differs between them.
 *
 * @param before the old revision
 * @param after the new revision
 * @param shared the readings of both, in which situations are written
 * @param comparison what differs
 */
public record Compared(
    KnowledgeBase before, KnowledgeBase after, KnowledgeBase shared, Comparison comparison) {}
