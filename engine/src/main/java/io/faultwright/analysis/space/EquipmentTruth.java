package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;

/** Whether a condition on equipment alone holds for a build. */
public final class EquipmentTruth {
  private EquipmentTruth() {}

  /** False also where the build has no such fact. */
  public static boolean holds(Condition condition, Build build) {
    return condition.match(
        all -> all.parts().stream().allMatch(part -> holds(part, build)),
        any -> any.parts().stream().anyMatch(part -> holds(part, build)),
        not -> !holds(not.part(), build),
        test -> holds(test, build));
  }

  private static boolean holds(Condition.Test test, Build build) {
    return test.pattern() instanceof OneOf oneOf
        && build.attribute(test.subject()).filter(oneOf.values()::contains).isPresent();
  }
}
