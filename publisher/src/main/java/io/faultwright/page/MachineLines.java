package io.faultwright.page;

import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.Version;
import io.faultwright.page.BulletinSection.Machines;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Models with their software, those of a family together that are named with the same versions. */
final class MachineLines {
  private final Equipment equipment;

  MachineLines(Equipment equipment) {
    this.equipment = equipment;
  }

  /** The lines that name exactly these; none where the handbook names no models. */
  List<Machines> of(Collection<Build> builds) {
    Map<Key, Set<String>> lines = new LinkedHashMap<>();
    software(builds)
        .forEach(
            (model, versions) ->
                lines
                    .computeIfAbsent(key(model, versions), key -> new LinkedHashSet<>())
                    .add(model));
    return lines.entrySet().stream()
        .map(
            line ->
                new Machines(
                    family(line.getKey().family()),
                    List.copyOf(line.getValue()),
                    line.getKey().versions(),
                    line.getKey().every()))
        .toList();
  }

  /** What the models of one line have in common. */
  private record Key(String family, List<String> versions, boolean every) {}

  private Key key(String model, List<String> versions) {
    List<String> all = software(equipment.builds()).getOrDefault(model, List.of());
    return new Key(equipment.models().get(model).family(), versions, versions.size() == all.size());
  }

  /** The versions of each model, ascending. */
  private static Map<String, List<String>> software(Collection<Build> builds) {
    Map<String, List<String>> software = new LinkedHashMap<>();
    SortedSet<Build> named = new TreeSet<>(builds);
    named.removeIf(build -> build.model().id().equals(Equipment.IMPLICIT));
    for (Build build : named) {
      software
          .computeIfAbsent(build.model().id(), model -> new ArrayList<>())
          .addAll(build.software().map(Version::text).stream().toList());
    }
    return software;
  }

  private String family(String id) {
    return equipment.families().containsKey(id) ? equipment.families().get(id).title() : id;
  }
}
