package io.faultwright.wording;

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
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Finds a short condition on equipment that singles some builds out of all published ones. */
public final class BuildSets {
  private static final Place NOWHERE = new Place("", 1, 1, 1);

  private final List<Build> published;
  private final List<String> attributes;

  public BuildSets(Equipment equipment) {
    this.published = equipment.builds();
    this.attributes =
        Stream.of(
                Stream.of(Equipment.FAMILY),
                equipment.options().keySet().stream(),
                Stream.of(Equipment.SOFTWARE, Equipment.MODEL))
            .flatMap(names -> names)
            .toList();
  }

  /**
   * A condition that holds for exactly these of the published builds: {@link Condition#ALWAYS} for
   * all, one line for each fact where that is enough, else one of a few such groups.
   */
  public Condition condition(Collection<Build> builds) {
    Set<Build> wanted = new TreeSet<>(builds);
    List<Condition> groups =
        product(wanted)
            .map(List::of)
            .orElseGet(() -> bySoftware(wanted).stream().map(this::group).toList());
    return groups.size() == 1 ? groups.get(0) : new Condition.Any(groups);
  }

  private Condition group(Set<Build> builds) {
    return product(builds).orElseThrow();
  }

  /** Models that share the same versions; each such group is a product of models and versions. */
  private static Collection<Set<Build>> bySoftware(Set<Build> builds) {
    Map<String, Set<Build>> byModel = new TreeMap<>();
    builds.forEach(
        build -> byModel.computeIfAbsent(build.model().id(), id -> new TreeSet<>()).add(build));
    Map<String, Set<Build>> bySoftware = new TreeMap<>();
    byModel
        .values()
        .forEach(
            model ->
                bySoftware
                    .computeIfAbsent(
                        values(model, Equipment.SOFTWARE).toString(), v -> new TreeSet<>())
                    .addAll(model));
    return bySoftware.values();
  }

  /** One line for each fact, where the builds are exactly what such lines can say. */
  private Optional<Condition> product(Set<Build> wanted) {
    List<String> needed = new ArrayList<>(factsOfAll(wanted));
    if (!wanted.equals(picked(wanted, needed))) {
      return Optional.empty();
    }
    for (int i = needed.size() - 1; i >= 0; i--) {
      String attribute = needed.remove(i);
      if (!wanted.equals(picked(wanted, needed))) {
        needed.add(i, attribute);
      }
    }
    return Optional.of(all(needed.stream().map(name -> test(wanted, name)).toList()));
  }

  private List<String> factsOfAll(Set<Build> wanted) {
    boolean oneModel = values(wanted, Equipment.MODEL).size() == 1;
    return (oneModel ? List.of(Equipment.MODEL, Equipment.SOFTWARE) : attributes)
        .stream()
            .filter(name -> wanted.stream().allMatch(build -> build.attribute(name).isPresent()))
            .toList();
  }

  private static Condition all(List<Condition> tests) {
    return tests.size() == 1 ? tests.get(0) : new Condition.All(tests);
  }

  private static Condition test(Set<Build> wanted, String attribute) {
    return new Test(attribute, new OneOf(Sorted.set(values(wanted, attribute))), NOWHERE);
  }

  private Set<Build> picked(Set<Build> wanted, List<String> facts) {
    Set<Build> picked = new TreeSet<>(published);
    for (String fact : facts) {
      Set<String> values = values(wanted, fact);
      picked.removeIf(build -> build.attribute(fact).filter(values::contains).isEmpty());
    }
    return picked;
  }

  private static Set<String> values(Set<Build> builds, String attribute) {
    TreeSet<String> values = new TreeSet<>();
    builds.forEach(build -> build.attribute(attribute).ifPresent(values::add));
    return values;
  }
}
