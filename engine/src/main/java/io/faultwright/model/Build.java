package io.faultwright.model;

import java.util.Comparator;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One published model with one published software version.
 *
 * @param model the model
 * @param software the version; absent where the model has no control software
 */
public record Build(Model model, Optional<Version> software) implements Comparable<Build> {
  private static final Comparator<Build> ORDER =
      Comparator.comparing((Build build) -> build.model.id())
          .thenComparing(build -> build.software.orElse(Version.NONE));

  /** What the build says about a family, model, software or option; absent where it has none. */
  public Optional<String> attribute(String name) {
    return switch (name) {
      case Equipment.FAMILY -> Optional.of(model.family());
      case Equipment.MODEL -> Optional.of(model.id());
      case Equipment.SOFTWARE -> software.map(Version::text);
      default -> Optional.ofNullable(model.options().get(name));
    };
  }

  /** What names the build: its model, and the software where there is some. */
  public SortedMap<String, String> facts() {
    SortedMap<String, String> facts = new TreeMap<>();
    facts.put(Equipment.MODEL, model.id());
    software.ifPresent(version -> facts.put(Equipment.SOFTWARE, version.text()));
    return facts;
  }

  /**
   * Whether a condition on equipment facts alone, such as {@code applies}, holds for this build.
   */
  public boolean satisfies(Condition condition) {
    return condition.match(
        all -> all.parts().stream().allMatch(this::satisfies),
        any -> any.parts().stream().anyMatch(this::satisfies),
        not -> !satisfies(not.part()),
        this::satisfiesTest);
  }

  private boolean satisfiesTest(Condition.Test test) {
    return attribute(test.subject()).filter(value -> accepts(test, value)).isPresent();
  }

  private static boolean accepts(Condition.Test test, String value) {
    return test.pattern() instanceof Condition.OneOf oneOf && oneOf.values().contains(value);
  }

  @Override
  public int compareTo(Build other) {
    return ORDER.compare(this, other);
  }

  /** Of its names alone; builds are put into sets very often. */
  @Override
  public int hashCode() {
    return 31 * model.id().hashCode() + software.hashCode();
  }

  @Override
  public String toString() {
    return model.id() + software.map(version -> " with software " + version.text()).orElse("");
  }
}
