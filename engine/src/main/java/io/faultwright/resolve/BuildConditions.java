package io.faultwright.resolve;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Test;

/** Decides conditions on equipment for one build. */
final class BuildConditions {
  private BuildConditions() {}

  /**
   * Whether the condition holds; a fact the build does not have is none of the values asked for.
   */
  static boolean holds(Condition condition, Build build) {
    return condition.match(
        all -> all.parts().stream().allMatch(part -> holds(part, build)),
        any -> any.parts().stream().anyMatch(part -> holds(part, build)),
        not -> !holds(not.part(), build),
        test -> holds(test, build));
  }

  private static boolean holds(Test test, Build build) {
    return test.pattern() instanceof OneOf oneOf
        && build.attribute(test.subject()).filter(oneOf.values()::contains).isPresent();
  }
}
