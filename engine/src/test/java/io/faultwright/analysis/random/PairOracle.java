package io.faultwright.analysis.random;

import io.faultwright.analysis.space.Axis;
import io.faultwright.model.Access;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SetUp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What tells two faults apart, by comparing every listed combination of cells with every other. */
final class PairOracle {
  private final KnowledgeBase knowledge;
  private final List<Axis> axes;
  private final Set<List<Integer>> one;
  private final Set<List<Integer>> other;
  private final Set<List<Integer>> both;
  private final FaultPair pair;

  /**
   * @param paths for each fault the cells, one for each axis, in which it is concluded
   */
  PairOracle(
      KnowledgeBase knowledge,
      List<Axis> axes,
      FaultPair pair,
      Map<String, Set<List<Integer>>> paths) {
    this.knowledge = knowledge;
    this.axes = axes;
    this.pair = pair;
    this.one = onCommon(paths.get(pair.one()), paths.get(pair.other()));
    this.other = onCommon(paths.get(pair.other()), paths.get(pair.one()));
    this.both = new HashSet<>(one);
    both.retainAll(other);
    one.removeAll(both);
    other.removeAll(both);
  }

  private static Set<List<Integer>> onCommon(Set<List<Integer>> paths, Set<List<Integer>> others) {
    Set<Integer> machines = others.stream().map(path -> path.get(0)).collect(Collectors.toSet());
    return paths.stream()
        .filter(path -> machines.contains(path.get(0)))
        .collect(Collectors.toCollection(HashSet::new));
  }

  /** Everything that is said of the pair, in one text. */
  String words() {
    String apart =
        somewhere() ? " by " + cheapest() + " needs " + needed() + " alone " + alone() : " by none";
    boolean sameMachine = !one.isEmpty() || !other.isEmpty() || !both.isEmpty();
    return pair + " " + sameMachine + " " + !both.isEmpty() + apart;
  }

  /** The part of the situations with either in which it is both. */
  double overlap() {
    Set<List<Integer>> either = new HashSet<>(one);
    either.addAll(other);
    either.addAll(both);
    return (double) coarse(both).size() / coarse(either).size();
  }

  private boolean somewhere() {
    return !one.isEmpty() && !other.isEmpty();
  }

  private SortedSet<String> cheapest() {
    return subsets(new ArrayList<>(all())).stream()
        .filter(this::tells)
        .min(
            Comparator.comparing(this::gravest)
                .thenComparing(this::minutes)
                .thenComparing(this::weighted)
                .thenComparing(Set::size)
                .thenComparing(readings -> String.join(" ", readings)))
        .orElseThrow();
  }

  private static List<SortedSet<String>> subsets(List<String> of) {
    List<SortedSet<String>> subsets = new ArrayList<>();
    for (int bits = 0; bits < 1 << of.size(); bits++) {
      SortedSet<String> subset = new TreeSet<>();
      for (int i = 0; i < of.size(); i++) {
        if ((bits >> i & 1) == 1) {
          subset.add(of.get(i));
        }
      }
      subsets.add(subset);
    }
    return subsets;
  }

  private Access gravest(Set<String> readings) {
    return readings.stream()
        .map(id -> knowledge.readings().get(id).access())
        .max(Comparator.naturalOrder())
        .orElse(Access.OUTSIDE);
  }

  private int minutes(Set<String> readings) {
    return setUps(readings).stream().mapToInt(setUp -> setUp.minutes().intValue()).sum()
        + readings.stream().mapToInt(id -> knowledge.readings().get(id).minutes().intValue()).sum();
  }

  private int weighted(Set<String> readings) {
    AccessWeights weights = knowledge.handbook().weights();
    return setUps(readings).stream()
            .mapToInt(one -> one.minutes().intValue() * weights.of(one.access()).intValue())
            .sum()
        + readings.stream()
            .mapToInt(
                id ->
                    knowledge.readings().get(id).minutes().intValue()
                        * weights.of(knowledge.readings().get(id).access()).intValue())
            .sum();
  }

  /** What is set up for readings, each once. */
  private Set<SetUp> setUps(Set<String> readings) {
    return readings.stream()
        .flatMap(id -> knowledge.readings().get(id).setUp().stream())
        .map(knowledge.setUps()::get)
        .collect(Collectors.toSet());
  }

  private SortedSet<String> needed() {
    SortedSet<String> needed = all();
    needed.removeIf(
        reading -> {
          SortedSet<String> others = all();
          others.remove(reading);
          return tells(others);
        });
    return needed;
  }

  private SortedSet<String> alone() {
    return named().stream()
        .filter(reading -> tells(whole(reading)))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** How likely it is that a reading leaves one of the two. */
  double settles(String reading) {
    int often = knowledge.faults().get(pair.one()).frequency().intValue();
    int oftenOther = knowledge.faults().get(pair.other()).frequency().intValue();
    return (often * lone(one, other, reading) + oftenOther * lone(other, one, reading))
        / (often + oftenOther);
  }

  private double lone(Set<List<Integer>> paths, Set<List<Integer>> others, String reading) {
    SortedSet<String> taken = whole(reading);
    Set<List<Integer>> seen =
        others.stream().map(path -> seen(path, taken)).collect(Collectors.toSet());
    Set<List<Integer>> lone =
        paths.stream()
            .filter(path -> !seen.contains(seen(path, taken)))
            .collect(Collectors.toSet());
    return (double) coarse(lone).size() / coarse(paths).size();
  }

  private Set<List<Integer>> coarse(Set<List<Integer>> paths) {
    Set<List<Integer>> coarse = new HashSet<>();
    for (List<Integer> path : paths) {
      List<Integer> groups = new ArrayList<>();
      for (int axis = 0; axis < path.size(); axis++) {
        groups.add(axes.get(axis).groups().get(path.get(axis)));
      }
      coarse.add(groups);
    }
    return coarse;
  }

  private boolean tells(SortedSet<String> taken) {
    Set<List<Integer>> seen =
        one.stream().map(path -> seen(path, taken)).collect(Collectors.toSet());
    return other.stream().noneMatch(path -> seen.contains(seen(path, taken)));
  }

  /** The cells that are known once some readings are taken. */
  private List<Integer> seen(List<Integer> path, SortedSet<String> taken) {
    List<Integer> seen = new ArrayList<>();
    for (int axis = 0; axis < path.size(); axis++) {
      seen.add(taken.containsAll(needs(axes.get(axis).subject())) ? path.get(axis) : -1);
    }
    return seen;
  }

  private Set<String> needs(Axis.Subject subject) {
    Set<String> needs = new HashSet<>();
    if (subject instanceof Axis.OfReading of) {
      needs.addAll(observed(of.reading()));
    } else if (subject instanceof Axis.OfSide of) {
      needs.addAll(observed(of.reading()));
      needs.addAll(knowledge.limits().get(of.reading()).drivers());
    }
    return needs;
  }

  private static List<String> observed(String reading) {
    return reading.equals(RandomKnowledge.DIFFERENCE) ? List.of("left", "right") : List.of(reading);
  }

  private SortedSet<String> whole(String reading) {
    SortedSet<String> whole = new TreeSet<>();
    for (Axis axis : axes) {
      if (axis.subject().equals(new Axis.OfReading(reading))
          || axis.subject().equals(new Axis.OfSide(reading))) {
        whole.addAll(needs(axis.subject()));
      }
    }
    return whole;
  }

  private SortedSet<String> all() {
    SortedSet<String> all = new TreeSet<>();
    axes.forEach(axis -> all.addAll(needs(axis.subject())));
    return all;
  }

  /** Every reading that has an axis. */
  SortedSet<String> named() {
    SortedSet<String> named = new TreeSet<>();
    for (Axis axis : axes) {
      Optional.of(axis.subject())
          .filter(Axis.OfReading.class::isInstance)
          .ifPresent(subject -> named.add(((Axis.OfReading) subject).reading()));
    }
    return named;
  }
}
