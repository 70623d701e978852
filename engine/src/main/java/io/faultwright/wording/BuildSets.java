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
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds a short condition on equipment that singles some builds out of a scope, all published ones
 * for the most.
 */
public final class BuildSets {
  /** Facts in the largest choice of them that is tried for the shortest words. */
  private static final int MOST_TRIED = 3;

  private static final Place NOWHERE = new Place("", 1, 1, 1);

  private final List<Build> scope;
  private final boolean oneModelByName;
  private final List<String> attributes;

  public BuildSets(Equipment equipment) {
    this(equipment, equipment.builds(), true);
  }

  /** Among the builds of a scope, by what they have in common rather than by a model's name. */
  public static BuildSets byFacts(Equipment equipment, List<Build> scope) {
    return new BuildSets(equipment, scope, false);
  }

  private BuildSets(Equipment equipment, List<Build> scope, boolean oneModelByName) {
    this.oneModelByName = oneModelByName;
    this.scope = List.copyOf(scope);
    this.attributes =
        Stream.of(
                Stream.of(Equipment.FAMILY),
                equipment.options().keySet().stream(),
                Stream.of(Equipment.SOFTWARE, Equipment.MODEL))
            .flatMap(names -> names)
            .toList();
  }

  /**
   * A condition that holds for exactly these builds of the scope: {@link Condition#ALWAYS} for all,
   * one line for each fact where that is enough, else one of a few such groups.
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

  /** The fewest lines, one a fact, where the builds are exactly what such lines can say. */
  private Optional<Condition> product(Set<Build> wanted) {
    List<String> facts = factsOfAll(wanted);
    if (!wanted.equals(picked(wanted, facts))) {
      return Optional.empty();
    }
    List<String> fewest =
        IntStream.rangeClosed(0, MOST_TRIED)
            .boxed()
            .flatMap(count -> choices(facts, count))
            .filter(some -> wanted.equals(picked(wanted, some)))
            .findFirst()
            .orElseGet(() -> thinned(wanted, facts));
    return Optional.of(all(fewest.stream().map(name -> test(wanted, name)).toList()));
  }

  /** Every choice of so many of the facts, in their order. */
  private static Stream<List<String>> choices(List<String> facts, int count) {
    if (count == 0) {
      return Stream.of(List.of());
    }
    return IntStream.rangeClosed(0, facts.size() - count)
        .boxed()
        .flatMap(
            first ->
                choices(facts.subList(first + 1, facts.size()), count - 1)
                    .map(
                        rest ->
                            Stream.concat(Stream.of(facts.get(first)), rest.stream()).toList()));
  }

  /** The facts without those that are not needed beside the others. */
  private List<String> thinned(Set<Build> wanted, List<String> facts) {
    List<String> needed = new ArrayList<>(facts);
    for (int i = needed.size() - 1; i >= 0; i--) {
      String attribute = needed.remove(i);
      if (!wanted.equals(picked(wanted, needed))) {
        needed.add(i, attribute);
      }
    }
    return needed;
  }

  private List<String> factsOfAll(Set<Build> wanted) {
    boolean oneModel = oneModelByName && values(wanted, Equipment.MODEL).size() == 1;
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
    Set<Build> picked = new TreeSet<>(scope);
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
