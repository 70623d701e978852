package io.faultwright.analysis.mutation;

import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.model.Case;

/**
 * A case that comes out as it expects.
 *
 * @param recorded the case
 * @param sighting what the rules say of it
 */
public record Witnessed(Case recorded, Sighting sighting) {}
