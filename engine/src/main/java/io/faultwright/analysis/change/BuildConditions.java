package io.faultwright.analysis.change;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Equipment;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Says sets of builds by model and software alone, whatever else the builds are. */
final class BuildConditions {
  static final Place NOWHERE = new Place("", 1, 1, 1);

  private BuildConditions() {}

  /** Holds for these builds and no other. */
  static Condition of(Collection<Build> builds) {
    SortedMap<String, List<String>> byModel = new TreeMap<>();
    for (Build build : builds) {
      List<String> versions =
          byModel.computeIfAbsent(build.model().id(), model -> new ArrayList<>());
      build.software().ifPresent(version -> versions.add(version.text()));
    }
    List<Condition> parts = new ArrayList<>();
    byModel.forEach((model, versions) -> parts.add(of(model, versions)));
    return new Condition.Any(parts);
  }

  private static Condition of(String model, List<String> versions) {
    Condition named = test(Equipment.MODEL, List.of(model));
    return versions.isEmpty()
        ? named
        : new Condition.All(List.of(named, test(Equipment.SOFTWARE, versions)));
  }

  private static Condition test(String subject, List<String> values) {
    return new Test(subject, new OneOf(Sorted.set(values)), NOWHERE);
  }
}
