package io.faultwright.page;

import io.faultwright.change.Comparison;
import io.faultwright.model.KnowledgeBase;

/**
 * What the handbook is compared with.
 *
 * @param before the earlier revision
 * @param shared the readings of both, which the regions speak of
 * @param comparison what differs
 */
public record Since(KnowledgeBase before, KnowledgeBase shared, Comparison comparison) {}
