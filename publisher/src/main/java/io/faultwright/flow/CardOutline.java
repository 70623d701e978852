package io.faultwright.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Sets patterns of readings into an outline in which what several have in common stands once: the
 * conditions that most patterns have come first.
 */
final class CardOutline {
  private static final String AND = "; ";

  /**
   * A way to an outcome.
   *
   * @param conditions readings, all of which hold
   * @param outcome what is the matter then
   * @param frequency how often that is met
   */
  record Way(List<String> conditions, String outcome, BigFraction frequency) {
    Way {
      conditions = List.copyOf(conditions);
    }

    private Way without(int first) {
      return new Way(conditions.subList(first, conditions.size()), outcome, frequency);
    }
  }

  private final List<Card.Entry> entries = new ArrayList<>();

  private CardOutline() {}

  /** The outline of some ways; within each branch the outcome that is met most often is first. */
  static List<Card.Entry> of(List<Way> ways) {
    Map<String, Integer> counts = new HashMap<>();
    ways.forEach(way -> way.conditions.forEach(one -> counts.merge(one, 1, Integer::sum)));
    Comparator<String> commonest =
        Comparator.comparing((String one) -> counts.get(one))
            .reversed()
            .thenComparing(Comparator.naturalOrder());
    CardOutline outline = new CardOutline();
    outline.add(
        0,
        ways.stream()
            .sorted(Comparator.comparing(Way::frequency).reversed().thenComparing(Way::outcome))
            .map(
                way ->
                    new Way(
                        way.conditions.stream().distinct().sorted(commonest).toList(),
                        way.outcome,
                        way.frequency))
            .toList());
    return List.copyOf(outline.entries);
  }

  private void add(int depth, List<Way> ways) {
    Map<String, List<Way>> branches = new LinkedHashMap<>();
    for (Way way : ways) {
      String first = way.conditions.isEmpty() ? "" : way.conditions.get(0);
      branches.computeIfAbsent(first, none -> new ArrayList<>()).add(way);
    }
    branches.values().forEach(branch -> addBranch(depth, branch));
  }

  private void addBranch(int depth, List<Way> branch) {
    int common = common(branch);
    String shared = String.join(AND, branch.get(0).conditions.subList(0, common));
    List<Way> rest = branch.stream().map(way -> way.without(common)).toList();
    String outcome =
        rest.stream()
            .filter(way -> way.conditions.isEmpty())
            .map(Way::outcome)
            .distinct()
            .collect(Collectors.joining(AND));
    entries.add(new Card.Entry(depth, shared, outcome));
    add(depth + 1, rest.stream().filter(way -> !way.conditions.isEmpty()).toList());
  }

  /** How many conditions all ways of a branch begin with. */
  private static int common(List<Way> branch) {
    List<String> first = branch.get(0).conditions;
    int common = 0;
    while (common < first.size() && haveAt(branch, common, first.get(common))) {
      common++;
    }
    return common;
  }

  private static boolean haveAt(List<Way> branch, int at, String condition) {
    return branch.stream()
        .allMatch(way -> at < way.conditions.size() && way.conditions.get(at).equals(condition));
  }
}
