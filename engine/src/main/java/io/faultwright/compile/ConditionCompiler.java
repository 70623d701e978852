package io.faultwright.compile;

import io.faultwright.model.Condition;
import java.util.List;
import java.util.function.Predicate;

/** Turns conditions into predicates. */
final class ConditionCompiler {
  private final TestBook tests;

  ConditionCompiler(TestBook tests) {
    this.tests = tests;
  }

  Predicate<View> compile(Condition condition) {
    return condition.match(
        all -> every(compile(all.parts())),
        any -> some(compile(any.parts())),
        not -> negation(compile(not.part())),
        test -> met(tests.number(test)));
  }

  private List<Predicate<View>> compile(List<Condition> parts) {
    return parts.stream().map(this::compile).toList();
  }

  private static Predicate<View> met(int test) {
    return view -> view.met(test);
  }

  private static Predicate<View> negation(Predicate<View> part) {
    return view -> !part.test(view.below());
  }

  private static Predicate<View> every(List<Predicate<View>> parts) {
    return view -> parts.stream().allMatch(part -> part.test(view));
  }

  private static Predicate<View> some(List<Predicate<View>> parts) {
    return view -> parts.stream().anyMatch(part -> part.test(view));
  }
}
