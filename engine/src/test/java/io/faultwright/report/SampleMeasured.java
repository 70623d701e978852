package io.faultwright.report;

import io.faultwright.adequacy.Coverage;
import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.Goal;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.Measured.Done;
import io.faultwright.adequacy.Mutant;
import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.source.Place;
import io.faultwright.wording.SampleBase;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Measured cases with something of everything. */
final class SampleMeasured {
  private static final List<Build> BUILDS = SampleBase.build().equipment().builds();

  private SampleMeasured() {}

  /** With mistakes, ended early. */
  static Measured stopped() {
    return measured(Optional.of(mutants()), new Done(3, 5), new Measured.Counts(4, 1, 2));
  }

  /** Without mistakes, all of it. */
  static Measured whole() {
    return measured(Optional.empty(), new Done(2, 2), new Measured.Counts(4, 0, 0));
  }

  private static Measured measured(
      Optional<List<MutantStatus>> mutants, Done done, Measured.Counts counts) {
    return new Measured(
        "Sample handbook", counts, BUILDS, List.of(iceLeft(), quiet()), mutants, done);
  }

  private static Coverage quiet() {
    return new Coverage(
        "quiet", "It is quiet", 1, List.of(goal(Criterion.RULES, "rule `any` fires", true, 1)));
  }

  private static Coverage iceLeft() {
    Stream<GoalStatus> few =
        Stream.of(
            goal(Criterion.RULES, "rule `valve` fires", true, 3),
            goal(Criterion.RULES, "rule `fan` fires", false, 0),
            goal(Criterion.CONDITIONS, "`ice: loose` not met", false, 2),
            new GoalStatus(pair(), false, new TreeSet<>(), new TreeSet<>()));
    Stream<GoalStatus> many =
        IntStream.rangeClosed(1, 7)
            .mapToObj(i -> goal(Criterion.BOUNDARIES, "`room` at " + i + " °C", false, 0));
    return new Coverage("ice-left", "Ice is left", 3, Stream.concat(few, many).toList());
  }

  private static Goal pair() {
    return new Goal(
        Criterion.PAIRS, "ice-left", Optional.empty(), "`ice: loose` with `fan: no`", place(1));
  }

  /** A goal that all builds but the last can show. */
  private static GoalStatus goal(Criterion criterion, String words, boolean shown, int on) {
    return new GoalStatus(
        new Goal(criterion, "ice-left", Optional.of("fan"), words, place(12)),
        shown,
        new TreeSet<>(BUILDS.subList(0, BUILDS.size() - 1)),
        new TreeSet<>(BUILDS.subList(0, on)));
  }

  private static Place place(int line) {
    return new Place("symptoms/ice.yaml", line, 3, 4);
  }

  private static List<MutantStatus> mutants() {
    return List.of(
        MutantStatus.killed(mutant(Operator.CONDITION_DROPPED, "`fan: no` left out"), "cold"),
        MutantStatus.survived(
            mutant(Operator.THRESHOLD_MOVED, "`room: above -18 °C` made `above -17.9 °C`"),
            new Difference(
                "ice-left", situation(), answers("fan-dead"), Sorted.set(List.<Answer>of()))),
        MutantStatus.equivalent(mutant(Operator.RULE_DELETED, "rule `fan` left out")),
        MutantStatus.undecided(
            new Mutant(
                Operator.LIMIT_MOVED,
                Optional.empty(),
                Optional.empty(),
                "low limit of `room`, -20 °C, made -19.9 °C",
                place(40))));
  }

  private static Mutant mutant(Operator operator, String words) {
    return new Mutant(operator, Optional.of("ice-left"), Optional.of("fan"), words, place(12));
  }

  private static SortedSet<Answer> answers(String fault) {
    return Sorted.set(List.of(new Answer.OfFault(fault)));
  }

  private static Situation situation() {
    return new Situation(
        new TreeMap<>(Map.of("model", "FL-12G1", "software", "2.10")),
        new TreeMap<>(
            Map.of(
                "ice",
                new Value.Word("untouched"),
                "room",
                new Value.Number(Decimals.parse("-17.9")))));
  }
}
