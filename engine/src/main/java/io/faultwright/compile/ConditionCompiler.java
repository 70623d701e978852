package io.faultwright.compile;

import io.faultwright.model.Condition;
import java.util.List;
import java.util.function.Predicate;

/** Turns conditions into predicates; two-valued, one for each certainty. */
final class ConditionCompiler {
  private final TestBook tests;

  ConditionCompiler(TestBook tests) {
    this.tests = tests;
  }

  Predicate<Facts> compile(Condition condition, Certainty certainty) {
    return condition.match(
        all -> every(compile(all.parts(), certainty)),
        any -> some(compile(any.parts(), certainty)),
        not -> compile(not.part(), certainty.below()).negate(),
        test -> compile(tests.number(test), certainty));
  }

  private List<Predicate<Facts>> compile(List<Condition> parts, Certainty certainty) {
    return parts.stream().map(part -> compile(part, certainty)).toList();
  }

  private static Predicate<Facts> compile(int test, Certainty certainty) {
    return facts -> certainty.met(facts.truth(test));
  }

  private static Predicate<Facts> every(List<Predicate<Facts>> parts) {
    return facts -> parts.stream().allMatch(part -> part.test(facts));
  }

  private static Predicate<Facts> some(List<Predicate<Facts>> parts) {
    return facts -> parts.stream().anyMatch(part -> part.test(facts));
  }
}
