package io.faultwright.run;

import io.faultwright.model.Condition;
import io.faultwright.model.Sorted;
import java.util.SortedSet;

/**
 * A test that decides a condition, or leaves it open.
 *
 * @param test as written
 * @param wanted whether the condition wants it to hold; false below a {@code not}
 * @param found what the situation says about it
 * @param missing readings and equipment facts that would have to be known to decide it; empty for
 *     an open test that nothing can decide, as where a reading cannot be taken or limits lack a row
 */
public record TestTrace(
    Condition.Test test, boolean wanted, Found found, SortedSet<String> missing) {
  public TestTrace {
    missing = Sorted.set(missing);
  }
}
