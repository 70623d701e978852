package io.faultwright.analysis.space;

import io.faultwright.model.Condition;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** The single tests inside conditions. */
public final class Tests {
  private Tests() {}

  /** Every test of a condition, left to right. */
  public static Stream<Condition.Test> of(Condition condition) {
    return condition.match(
        all -> all.parts().stream().flatMap(Tests::of),
        any -> any.parts().stream().flatMap(Tests::of),
        not -> of(not.part()),
        Stream::of);
  }

  static List<Condition.Test> of(Collection<Condition> conditions) {
    return conditions.stream().flatMap(Tests::of).toList();
  }
}
