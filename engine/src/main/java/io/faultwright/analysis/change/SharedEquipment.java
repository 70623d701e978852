package io.faultwright.analysis.change;

import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.Model;
import io.faultwright.model.Version;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The models and software that two revisions both publish; families and options may differ. */
public final class SharedEquipment {
  private SharedEquipment() {}

  /** The shared part, with the facts of the new revision. */
  static Equipment of(Equipment before, Equipment after) {
    SortedMap<String, Model> models = new TreeMap<>();
    for (Model model : after.models().values()) {
      List<Build> shared =
          builds(after, model.id()).stream().filter(b -> same(b, before).isPresent()).toList();
      if (!shared.isEmpty()) {
        models.put(model.id(), with(model, shared));
      }
    }
    return new Equipment(
        after.families(), after.options(), models, Optional.empty(), after.refrigerants());
  }

  private static List<Build> builds(Equipment equipment, String model) {
    return equipment.builds().stream().filter(b -> b.model().id().equals(model)).toList();
  }

  private static Model with(Model model, List<Build> builds) {
    List<Version> software = builds.stream().flatMap(build -> build.software().stream()).toList();
    return new Model(
        model.id(),
        model.place(),
        model.title(),
        model.family(),
        model.options(),
        software,
        model.refrigerant(),
        model.data());
  }

  /** The build of the same model and software, with the same refrigerant in it. */
  static Optional<Build> same(Build build, Equipment among) {
    return among.builds().stream()
        .filter(other -> other.model().id().equals(build.model().id()))
        .filter(other -> other.software().equals(build.software()))
        .filter(other -> other.model().refrigerant().equals(build.model().refrigerant()))
        .findFirst();
  }

  /** Builds of the first that the second does not publish. */
  public static List<Build> missing(Equipment equipment, Equipment from) {
    return equipment.builds().stream().filter(build -> same(build, from).isEmpty()).toList();
  }
}
