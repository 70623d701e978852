package io.faultwright.compile;

import io.faultwright.model.Condition;
import io.faultwright.model.Truth;
import java.util.List;
import java.util.function.Predicate;

/**
 * Turns conditions into predicates. Negations are carried down to the tests, so that a test is
 * asked for what is wanted of it.
 */
final class ConditionCompiler {
  private final TestBook tests;

  ConditionCompiler(TestBook tests) {
    this.tests = tests;
  }

  Predicate<View> compile(Condition condition) {
    return compile(condition, Truth.TRUE);
  }

  private Predicate<View> compile(Condition condition, Truth wanted) {
    boolean positive = wanted == Truth.TRUE;
    return condition.match(
        all -> joined(all.parts(), wanted, positive),
        any -> joined(any.parts(), wanted, !positive),
        not -> compile(not.part(), wanted.not()),
        test -> met(tests.number(test), wanted));
  }

  private static Predicate<View> met(int test, Truth wanted) {
    return view -> view.met(test, wanted);
  }

  private Predicate<View> joined(List<Condition> conditions, Truth wanted, boolean every) {
    List<Predicate<View>> parts =
        conditions.stream().map(condition -> compile(condition, wanted)).toList();
    return every ? view -> none(parts, view, false) : view -> !none(parts, view, true);
  }

  /** Whether no part comes out so; asked for every situation, so without a stream. */
  private static boolean none(List<Predicate<View>> parts, View view, boolean outcome) {
    for (Predicate<View> part : parts) {
      if (part.test(view) == outcome) {
        return false;
      }
    }
    return true;
  }
}
