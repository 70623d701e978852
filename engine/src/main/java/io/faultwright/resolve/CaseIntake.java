package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads cases from outside the knowledge base, one after the other. */
public final class CaseIntake {
  /** Ids are compared among so many cases from the first on, so that memory does not grow. */
  private static final int COMPARED = 10_000;

  private final Function<Problems, CaseResolver> resolvers;
  private final Map<String, Scalar> seen = new HashMap<>();
  private Problems problems = new Problems();
  private CaseResolver resolver;

  CaseIntake(Function<Problems, CaseResolver> resolvers) {
    this.resolvers = resolvers;
    this.resolver = resolvers.apply(problems);
  }

  /** One case, or the problems that keep it from being read. */
  public GivenCases read(Entry entry) {
    earlier(entry).ifPresent(key -> twice(entry.key(), key));
    GivenCase given = resolver.given(Definition.of(Kind.CASE, entry));
    if (problems.isEmpty()) {
      return new GivenCases(List.of(given), List.of());
    }
    List<Problem> found = problems.sorted();
    problems = new Problems();
    resolver = resolvers.apply(problems);
    return new GivenCases(List.of(), found);
  }

  private Optional<Scalar> earlier(Entry entry) {
    Optional<Scalar> key = Optional.ofNullable(seen.get(entry.name()));
    if (key.isEmpty() && seen.size() < COMPARED) {
      seen.put(entry.name(), entry.key());
    }
    return key;
  }

  private void twice(Scalar key, Scalar earlier) {
    problems.add(
        new Problem(
            List.of(key.place(), earlier.place()),
            "case " + Words.quoted(key.text()) + " stands twice",
            "give one of the two another id"));
  }
}
