package io.faultwright.page;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Family;
import io.faultwright.model.Symptom;
import java.util.List;

/** Which symptoms a family's published builds can have. */
final class Families {
  private final Desk desk;

  Families(Desk desk) {
    this.desk = desk;
  }

  List<Link> symptoms(Family family) {
    List<Build> builds =
        desk.kb().equipment().builds().stream()
            .filter(build -> build.model().family().equals(family.id()))
            .toList();
    return desk.links()
        .symptoms(
            desk.kb().symptoms().values().stream()
                .filter(symptom -> builds.stream().anyMatch(b -> holds(symptom.applies(), b)))
                .map(Symptom::id)
                .toList());
  }

  /** Whether a condition on equipment facts holds for a build. */
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
