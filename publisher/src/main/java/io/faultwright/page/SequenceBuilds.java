package io.faultwright.page;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Row;
import io.faultwright.operation.Program;
import io.faultwright.wording.BuildSets;
import io.faultwright.wording.Times;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** The machines that work by a sequence, and what they have in common. */
final class SequenceBuilds {
  private final Desk desk;
  private final Sequence sequence;
  private final List<Program> programs;
  private final BuildSets sets;

  /**
   * @param shown of those machines, which ones are shown
   */
  SequenceBuilds(Desk desk, Sequence sequence, Predicate<Build> shown) {
    this(
        desk,
        sequence,
        desk.kb().equipment().builds().stream()
            .filter(build -> build.satisfies(sequence.applies()))
            .filter(shown)
            .sorted()
            .toList());
  }

  /**
   * Some of them.
   *
   * @param builds machines that work by the sequence
   */
  SequenceBuilds(Desk desk, Sequence sequence, List<Build> builds) {
    this.desk = desk;
    this.sequence = sequence;
    this.programs = builds.stream().map(build -> Program.of(sequence, build)).toList();
    this.sets = BuildSets.byFacts(desk.kb().equipment(), builds);
  }

  List<Program> all() {
    return programs;
  }

  List<Program> on(Condition applies) {
    return programs.stream().filter(one -> one.build().satisfies(applies)).toList();
  }

  /** Those that are alike in something, in the order of the first of each. */
  static <T> Map<T, List<Program>> alike(Collection<Program> programs, Function<Program, T> what) {
    Map<T, List<Program>> groups = new LinkedHashMap<>();
    programs.forEach(
        one -> groups.computeIfAbsent(what.apply(one), none -> new ArrayList<>()).add(one));
    return groups;
  }

  /**
   * The fewest words that single them out among those that are shown; for all of them, what the
   * sequence applies to, or which they are where some are not shown.
   */
  String words(Collection<Program> some) {
    List<Build> builds = some.stream().map(Program::build).toList();
    Condition condition = sets.condition(builds);
    if (!condition.equals(Condition.ALWAYS)) {
      return words(desk, condition);
    }
    return showsAll()
        ? words(desk, sequence.applies())
        : words(desk, desk.kb().equipment().builds(), builds);
  }

  private boolean showsAll() {
    long all =
        desk.kb().equipment().builds().stream()
            .filter(build -> build.satisfies(sequence.applies()))
            .count();
    return programs.size() == all;
  }

  /** The fewest words that single machines out among those of a scope. */
  static String words(Desk desk, List<Build> scope, List<Build> builds) {
    return words(desk, BuildSets.byFacts(desk.kb().equipment(), scope).condition(builds));
  }

  private static String words(Desk desk, Condition condition) {
    return condition.equals(Condition.ALWAYS)
        ? Words.upperFirst(desk.say("all equipment"))
        : desk.words().condition(condition);
  }

  /** Equipment on which a line holds; empty for all. */
  String applies(Condition applies) {
    return new Clauses(desk).line(applies);
  }

  /** How long something lasts, by groups of machines; machines without a value are left out. */
  Map<BigFraction, List<Program>> seconds(Lasting lasting, Condition applies) {
    Map<BigFraction, List<Program>> groups = new LinkedHashMap<>();
    alike(on(applies), one -> seconds(one, lasting))
        .forEach((value, some) -> value.ifPresent(seconds -> groups.put(seconds, some)));
    return groups;
  }

  /** How long something lasts on a machine; absent where it has no value for it. */
  Optional<BigFraction> seconds(Program program, Lasting lasting) {
    return lasting.seconds().or(() -> program.seconds(sequence.time(lasting.time().orElseThrow())));
  }

  /** A figure of a table on a machine. */
  static Optional<BigFraction> value(Program program, List<Row> rows) {
    return program.fitting(rows).stream().findFirst().map(Row::value);
  }

  Times times() {
    return new Times(desk.words().say());
  }

  /** How long something lasts: {@code 40 s}, or {@code 3 min or 6 min} where machines differ. */
  String span(Lasting lasting, Condition applies) {
    List<String> spans = seconds(lasting, applies).keySet().stream().map(times()::span).toList();
    return spans.isEmpty() ? desk.say("not known") : desk.words().say().or(spans);
  }

  /** The times of the machines where they differ; none where all have the same. */
  List<Fact> differing(Lasting lasting, Condition applies) {
    Map<BigFraction, List<Program>> groups = seconds(lasting, applies);
    return groups.size() < 2
        ? List.of()
        : groups.entrySet().stream()
            .map(one -> new Fact(times().span(one.getKey()), words(one.getValue())))
            .toList();
  }
}
