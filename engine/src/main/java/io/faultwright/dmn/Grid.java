package io.faultwright.dmn;

import io.faultwright.analysis.space.Cut;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The columns that some conditions of a symptom need, and sets of their cells.
 *
 * <p>Unlike {@code analysis.space}, which holds complete situations, each column here has a cell
 * for what is not known, since a decision table is asked with partial knowledge too.
 */
final class Grid {
  private final KnowledgeBase kb;
  private final List<Column> columns = new ArrayList<>();
  private final Column.Groups groups;
  private final SortedMap<String, Integer> values = new TreeMap<>();
  private final SortedMap<String, Integer> sides = new TreeMap<>();
  private final SortedMap<String, Integer> untaken = new TreeMap<>();
  private final Diagrams diagrams;

  /**
   * @param groups machines that nothing in the symptom tells apart
   * @param conditions those to be asked about
   */
  Grid(KnowledgeBase kb, Column.Groups groups, List<Condition> conditions) {
    this.kb = kb;
    this.groups = groups;
    columns.add(groups);
    Map<String, List<Condition.Test>> tests = new LinkedHashMap<>();
    conditions.stream()
        .flatMap(Condition::tests)
        .filter(test -> kb.readings().containsKey(test.subject()))
        .forEach(test -> tests.computeIfAbsent(test.subject(), id -> new ArrayList<>()).add(test));
    tests.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, List<Condition.Test>> one) -> -size(one))
                .thenComparing(Map.Entry::getKey))
        .forEach(one -> add(one.getKey(), one.getValue()));
    this.diagrams = new Diagrams(columns.stream().mapToInt(Column::size).toArray());
  }

  private static int size(Map.Entry<String, List<Condition.Test>> tests) {
    return tests.getValue().size();
  }

  private void add(String reading, List<Condition.Test> tests) {
    if (tests.stream().anyMatch(test -> test.pattern() instanceof AgainstLimits)) {
      sides.put(reading, columns.size());
      columns.add(new Column.Sides(reading));
    }
    if (tests.stream().anyMatch(test -> !(test.pattern() instanceof AgainstLimits))) {
      values.put(reading, columns.size());
      columns.add(value(kb.readings().get(reading), tests));
    }
    if (tests.stream().anyMatch(test -> test.pattern() instanceof CannotBeTaken)) {
      untaken.put(reading, columns.size());
      columns.add(new Column.Untaken(reading, new Amounts(kb).untaken(reading)));
    }
  }

  private Column value(Reading reading, List<Condition.Test> tests) {
    SortedSet<Cut> cuts = new TreeSet<>();
    tests.stream()
        .map(Condition.Test::pattern)
        .filter(InInterval.class::isInstance)
        .forEach(pattern -> cuts.addAll(Cut.of(((InInterval) pattern).interval())));
    return reading
        .domain()
        .match(
            measured -> numbers(kb, reading.id(), Cut.pieces(measured.range(), cuts)),
            choice -> new Column.Words(reading.id(), choice.ids()));
  }

  /** A quantity in pieces. */
  static Column.Numbers numbers(KnowledgeBase kb, String reading, List<Interval> pieces) {
    Amounts amounts = new Amounts(kb);
    Sum sum = amounts.sum(reading);
    boolean computed = kb.readings().get(reading).derived().isPresent();
    Column.Numbers shape = new Column.Numbers(reading, pieces, computed, "", BigFraction.ONE);
    BigFraction times = amounts.times(sum, shape.ends());
    String expression = amounts.expression(sum.times(times));
    return new Column.Numbers(reading, pieces, computed, expression, times);
  }

  static Stream<BigFraction> ends(Interval piece) {
    return Stream.concat(piece.low().stream(), piece.high().stream()).map(Interval.End::value);
  }

  /** Builds to which a symptom applies, those together that none of its conditions tells apart. */
  static Column.Groups groups(KnowledgeBase kb, Symptom symptom, Relevant relevant) {
    Map<List<Object>, List<Build>> groups = new LinkedHashMap<>();
    for (Build build : kb.equipment().builds()) {
      if (build.satisfies(symptom.applies())) {
        List<Object> signature = relevant.tests().map(test -> signature(kb, test, build)).toList();
        groups.computeIfAbsent(signature, key -> new ArrayList<>()).add(build);
      }
    }
    return new Column.Groups(List.copyOf(groups.values()));
  }

  private static Object signature(KnowledgeBase kb, Condition.Test test, Build build) {
    if (!kb.readings().containsKey(test.subject())) {
      return build.satisfies(test);
    }
    boolean exists = exists(kb, test, build);
    return exists && test.pattern() instanceof AgainstLimits
        ? kb.limits().get(test.subject()).rows().stream()
            .map(row -> build.satisfies(row.builds()))
            .toList()
        : exists;
  }

  /** Whether a machine has the reading of a test, and those its limits follow. */
  static boolean exists(KnowledgeBase kb, Condition.Test test, Build build) {
    return has(kb, test.subject(), build)
        && (!(test.pattern() instanceof AgainstLimits)
            || kb.limits().get(test.subject()).drivers().stream()
                .allMatch(driver -> has(kb, driver, build)));
  }

  private static boolean has(KnowledgeBase kb, String reading, Build build) {
    return !kb.readings().containsKey(reading)
        || build.satisfies(kb.readings().get(reading).applies());
  }

  KnowledgeBase knowledge() {
    return kb;
  }

  List<Column> columns() {
    return columns;
  }

  Diagrams diagrams() {
    return diagrams;
  }

  /** Readings that are held against limits. */
  SortedSet<String> limited() {
    return new TreeSet<>(sides.keySet());
  }

  /** Machines without a group: those to which the symptom does not apply. */
  int elsewhere() {
    BitSet none = new BitSet();
    none.set(groups.builds().size());
    return diagrams.literal(0, none);
  }

  /** The groups of which a build stands for all. */
  int groups(Predicate<Build> wanted) {
    BitSet chosen = new BitSet();
    for (int i = 0; i < groups.builds().size(); i++) {
      chosen.set(i, wanted.test(groups.builds().get(i).get(0)));
    }
    return diagrams.literal(0, chosen);
  }

  Column value(String reading) {
    return columns.get(values.get(reading));
  }

  int value(String reading, BitSet classes) {
    return diagrams.literal(values.get(reading), classes);
  }

  int side(String reading, BitSet classes) {
    return diagrams.literal(sides.get(reading), classes);
  }

  /** Where a reading is known to be impossible to take. */
  int untaken(String reading) {
    BitSet yes = new BitSet();
    yes.set(Column.Untaken.YES);
    return diagrams.literal(untaken.get(reading), yes);
  }
}
