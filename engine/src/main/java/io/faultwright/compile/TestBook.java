package io.faultwright.compile;

import io.faultwright.model.Condition.Test;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The distinct tests of a symptom, numbered, so that each is asked once a situation. */
final class TestBook {
  private final Map<Test, Integer> numbers = new IdentityHashMap<>();
  private final List<Probe> probes = new ArrayList<>();
  private final List<Predicate<Candidates>> existences = new ArrayList<>();

  TestBook(List<Statement> statements, ProbeMaker maker) {
    Map<String, Integer> distinct = new HashMap<>();
    statements.stream()
        .flatMap(statement -> statement.condition().tests())
        .forEach(
            test ->
                numbers.put(
                    test,
                    distinct.computeIfAbsent(
                        Canonical.of(test), text -> add(maker.of(test), maker.existence(test)))));
  }

  private int add(Probe probe, Predicate<Candidates> existence) {
    probes.add(probe);
    existences.add(existence);
    return probes.size() - 1;
  }

  /** The number of a test that stands in a statement; tests that mean the same share one. */
  int number(Test test) {
    return numbers.get(test);
  }

  Probe probe(int number) {
    return probes.get(number);
  }

  /** Whether some of the builds that a machine can be have what a test asks about. */
  Predicate<Candidates> existence(int number) {
    return existences.get(number);
  }

  int size() {
    return probes.size();
  }
}
