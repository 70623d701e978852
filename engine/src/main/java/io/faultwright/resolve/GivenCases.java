package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import java.util.List;

/**
 * Cases from outside the knowledge base.
 *
 * @param cases those that could be read, in the written order
 * @param problems of the others
 */
public record GivenCases(List<GivenCase> cases, List<Problem> problems) {
  public GivenCases {
    cases = List.copyOf(cases);
    problems = List.copyOf(problems);
  }
}
