package io.faultwright.analysis.coverage;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Test;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The tests of a condition, those that mean the same counted once. */
public final class Tests {
  private static final Condition NEVER = new Condition.Any(List.of());

  private Tests() {}

  private record Key(String subject, Pattern pattern) {
    static Key of(Test test) {
      return new Key(test.subject(), test.pattern());
    }
  }

  /** Each once, in the written order. */
  public static List<Test> distinct(Condition condition) {
    Map<Key, Test> tests = new LinkedHashMap<>();
    condition.tests().forEach(test -> tests.putIfAbsent(Key.of(test), test));
    return List.copyOf(tests.values());
  }

  /** The condition with a test, wherever it stands, taken for true or for false. */
  static Condition fixed(Condition condition, Test test, boolean value) {
    return condition.match(
        all -> new Condition.All(fixed(all.parts(), test, value)),
        any -> new Condition.Any(fixed(any.parts(), test, value)),
        not -> new Condition.Not(fixed(not.part(), test, value)),
        one -> Key.of(one).equals(Key.of(test)) ? value ? Condition.ALWAYS : NEVER : one);
  }

  private static List<Condition> fixed(List<Condition> parts, Test test, boolean value) {
    return parts.stream().map(part -> fixed(part, test, value)).toList();
  }
}
