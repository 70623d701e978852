package io.faultwright.compile;

import io.faultwright.model.Condition.Test;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The distinct tests of a symptom, numbered, so that each is asked once a situation. */
final class TestBook {
  private final ProbeMaker maker;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<Probe> probes = new ArrayList<>();

  TestBook(ProbeMaker maker) {
    this.maker = maker;
  }

  int number(Test test) {
    return numbers.computeIfAbsent(Canonical.of(test), text -> add(maker.of(test)));
  }

  private int add(Probe probe) {
    probes.add(probe);
    return probes.size() - 1;
  }

  Probe probe(int number) {
    return probes.get(number);
  }

  int size() {
    return probes.size();
  }
}
