package io.faultwright.analysis.coverage;

import io.faultwright.model.Case;
import java.util.SortedSet;

/**
 * What came out when a case was run.
 *
 * @param recorded the case
 * @param passed whether it came out as it expects
 * @param fired ids of the rules of its symptom that fired
 * @param outcome what came out, in words
 */
public record CaseRecord(Case recorded, boolean passed, SortedSet<String> fired, String outcome) {}
