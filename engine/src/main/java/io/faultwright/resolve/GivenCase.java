package io.faultwright.resolve;

import io.faultwright.model.Case;

/**
 * A case from outside the knowledge base.
 *
 * @param recorded the case
 * @param judged whether it says what it expects
 */
public record GivenCase(Case recorded, boolean judged) {}
