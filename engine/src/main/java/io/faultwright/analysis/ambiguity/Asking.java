package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Taking;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.outcome.Separation;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Effort;
import io.faultwright.model.Equipment;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What can be read next. What must be right first comes first, in the written order; as long as it
 * is open, whether it is right is all that one wants to know.
 */
final class Asking {
  private final SymptomSpace symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final Takings takings;
  private final Separation separation;
  private final List<Result> results;
  private long work;

  Asking(SymptomSpace symptom, List<Result> results) {
    this.symptom = symptom;
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.takings = new Takings(space);
    this.separation = new Separation(space);
    this.results = results;
  }

  /**
   * How far one has come.
   *
   * @param situations those that are left
   * @param taken the readings that are known
   */
  record State(int situations, SortedSet<String> taken) {
    State {
      taken = Sorted.set(taken);
    }

    /** After a taking with one of its outcomes. */
    State after(Taking taking, int part) {
      SortedSet<String> more = new TreeSet<>(taken);
      more.addAll(taking.readings());
      return new State(part, more);
    }
  }

  /** How many times the outcome of a reading was held against something that can come out. */
  long work() {
    return work;
  }

  /** Whether one outcome is left. */
  boolean isDecided(int situations) {
    return results.stream()
            .filter(result -> diagrams.and(situations, result.situations()) != Diagrams.NONE)
            .limit(2)
            .count()
        < 2;
  }

  /** How likely it is to be in some of the situations, relative to others. */
  double likelihood(int situations) {
    return separation.likelihood(situations, results);
  }

  /** Everything that can be read next and has more than one outcome. */
  List<Ask> possible(State state) {
    for (int i = 0; i < symptom.referrals().size(); i++) {
      List<Ask> first = onFirst(state, i);
      if (!first.isEmpty()) {
        return first;
      }
    }
    return asks(state, results, subject -> true);
  }

  /** What tells whether something is right that must be right first; none where that is known. */
  private List<Ask> onFirst(State state, int position) {
    int wrong = diagrams.and(state.situations(), symptom.referrals().get(position));
    int right = diagrams.minus(state.situations(), wrong);
    if (wrong == Diagrams.NONE || right == Diagrams.NONE) {
      return List.of();
    }
    Symptom.First first = symptom.symptom().first().get(position);
    Set<String> subjects =
        first.when().tests().map(Condition.Test::subject).collect(Collectors.toSet());
    List<Result> sides = new ArrayList<>();
    for (int side : List.of(wrong, right)) {
      sides.add(new Result(Results.NOTHING, side, likelihood(side)));
    }
    return asks(state, sides, subjects::contains);
  }

  private List<Ask> asks(State state, List<Result> aim, Predicate<String> subjects) {
    return Stream.concat(nameplate(state, aim, subjects), readings(state, aim, subjects)).toList();
  }

  /** The nameplate and the version shown are read in one look, without effort. */
  private Stream<Ask> nameplate(State state, List<Result> aim, Predicate<String> subjects) {
    if (space.knowledge().equipment().attributes().stream().noneMatch(subjects)) {
      return Stream.empty();
    }
    SortedSet<String> facts = openFacts(state);
    Taking taking = new Taking(facts, Sorted.set(Set.of()), Effort.NONE);
    List<Integer> parts = split(List.of(state.situations()), 0, cells(space.axes().get(0)));
    return facts.stream().limit(1).flatMap(fact -> ask(state, aim, fact, taking, parts).stream());
  }

  private static List<BitSet> cells(Axis axis) {
    return IntStream.range(0, axis.cells().size())
        .mapToObj(cell -> axis.where(axis.cells().get(cell)::equals))
        .toList();
  }

  /** What is not known of model and version yet. */
  private SortedSet<String> openFacts(State state) {
    List<Build> builds =
        diagrams.occurring(state.situations())[0].stream()
            .mapToObj(cell -> (Cell.Builds) space.axes().get(0).cells().get(cell))
            .flatMap(cell -> cell.builds().stream())
            .toList();
    SortedSet<String> open = new TreeSet<>(Set.of(Equipment.MODEL, Equipment.SOFTWARE));
    open.removeIf(fact -> builds.stream().map(of -> of.attribute(fact)).distinct().count() < 2);
    return open;
  }

  private Stream<Ask> readings(State state, List<Result> aim, Predicate<String> subjects) {
    Map<SortedSet<String>, String> names = new LinkedHashMap<>();
    for (int axis = 1; axis < space.axes().size(); axis++) {
      SortedSet<String> takes = new TreeSet<>(takings.needs(axis));
      takes.removeAll(state.taken());
      if (!takes.isEmpty() && subjects.test(reading(axis))) {
        names.merge(takes, name(axis, takes), BinaryOperator.minBy(Comparator.naturalOrder()));
      }
    }
    return names.entrySet().stream().flatMap(ask -> ask(state, aim, ask).stream());
  }

  /** What is taken where that is one reading, else what it is taken for. */
  private String name(int axis, SortedSet<String> takes) {
    return takes.size() == 1 ? takes.first() : reading(axis);
  }

  private Optional<Ask> ask(
      State state, List<Result> aim, Map.Entry<SortedSet<String>, String> of) {
    Taking taking = takings.taking(of.getKey(), state.taken());
    return ask(state, aim, of.getValue(), taking, parts(state, of.getKey()));
  }

  private String reading(int axis) {
    Axis.Subject subject = space.axes().get(axis).subject();
    return subject instanceof Axis.OfReading of ? of.reading() : ((Axis.OfSide) subject).reading();
  }

  /** The situations divided by the classes that become known. */
  private List<Integer> parts(State state, SortedSet<String> takes) {
    SortedSet<String> after = new TreeSet<>(state.taken());
    after.addAll(takes);
    BitSet axes = takings.known(after);
    axes.andNot(takings.known(state.taken()));
    List<Integer> parts = List.of(state.situations());
    for (int axis = axes.nextSetBit(1); axis >= 0; axis = axes.nextSetBit(axis + 1)) {
      parts = split(parts, axis, groups(axis));
    }
    return parts;
  }

  private Collection<BitSet> groups(int axis) {
    List<Integer> numbers = space.axes().get(axis).groups();
    Map<Integer, BitSet> groups = new LinkedHashMap<>();
    for (int cell = 0; cell < numbers.size(); cell++) {
      groups.computeIfAbsent(numbers.get(cell), none -> new BitSet()).set(cell);
    }
    return groups.values();
  }

  private List<Integer> split(List<Integer> parts, int axis, Collection<BitSet> classes) {
    List<Integer> finer = new ArrayList<>();
    for (int part : parts) {
      for (BitSet cells : classes) {
        int inside = diagrams.and(part, diagrams.literal(axis, cells));
        if (inside != Diagrams.NONE) {
          finer.add(inside);
        }
      }
    }
    return finer;
  }

  private Optional<Ask> ask(
      State state, List<Result> aim, String reading, Taking taking, List<Integer> parts) {
    work += (long) parts.size() * aim.size();
    return parts.size() < 2
        ? Optional.empty()
        : Optional.of(
            new Ask(reading, taking, parts, separation.gain(state.situations(), parts, aim)));
  }
}
