package io.faultwright.analysis.ambiguity;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * All complete situations of a symptom that agree with what a case gives, by what is told in them.
 * Exact: each measured reading can have no other value than the one given.
 *
 * @param space the situations that agree
 * @param results what is told in them, weighed by how well it agrees with what is given
 * @param taken the readings that are known
 */
record OpenCase(SymptomSpace space, List<Result> results, SortedSet<String> taken) {
  private static final Place NOWHERE = new Place("", 1, 1, 1);

  OpenCase {
    results = List.copyOf(results);
    taken = Sorted.set(taken);
  }

  /**
   * The situations that agree.
   *
   * @param all the whole space of the symptom
   * @param told its results
   * @return empty where the symptom is not offered on such a machine
   */
  static Optional<OpenCase> of(SymptomSpace all, List<Result> told, Situation given) {
    KnowledgeBase knowledge = all.space().knowledge();
    List<Build> builds =
        SymptomSpace.builds(knowledge, all.symptom()).stream()
            .filter(build -> has(build, given))
            .toList();
    return builds.isEmpty()
        ? Optional.empty()
        : Optional.of(of(all, told, builds, usable(knowledge, builds, given)));
  }

  private static boolean has(Build build, Situation given) {
    return given.equipment().entrySet().stream()
        .allMatch(fact -> build.attribute(fact.getKey()).equals(Optional.of(fact.getValue())));
  }

  /** What is given or assumed about readings that the machine has and that nobody computes. */
  private static SortedMap<String, Value> usable(
      KnowledgeBase knowledge, List<Build> builds, Situation given) {
    SortedMap<String, Value> usable =
        new TreeMap<>(new DerivedValues(knowledge).withAssumed(given).readings());
    usable.keySet().retainAll(knowledge.readings().keySet());
    usable
        .keySet()
        .removeIf(
            id -> {
              Reading reading = knowledge.readings().get(id);
              return reading.derived().isPresent()
                  || builds.stream().noneMatch(build -> build.satisfies(reading.applies()));
            });
    return usable;
  }

  private static OpenCase of(
      SymptomSpace all, List<Result> told, List<Build> builds, SortedMap<String, Value> given) {
    Symptom symptom = all.symptom();
    KnowledgeBase narrowed = narrowed(all.space().knowledge(), given);
    List<Condition> conditions = new ArrayList<>();
    given.forEach(
        (reading, value) -> conditions.add(new Condition.Test(reading, pattern(value), NOWHERE)));
    SymptomSpace here = SymptomSpace.where(narrowed, symptom, builds, conditions, Deadline.NEVER);
    return new OpenCase(here, weighed(here, all, told, builds), Sorted.set(given.keySet()));
  }

  private static Pattern pattern(Value value) {
    return value.match(
        word -> new OneOf(Sorted.set(Set.of(word.id()))),
        number -> new InInterval(Interval.point(number.amount())),
        CannotBeTaken::new);
  }

  /** The same where what was measured can be nothing else; its axis is not cut then. */
  private static KnowledgeBase narrowed(KnowledgeBase kb, SortedMap<String, Value> given) {
    SortedMap<String, Reading> readings = new TreeMap<>(kb.readings());
    given.forEach(
        (id, value) -> {
          if (value instanceof Value.Number number
              && readings.get(id).domain() instanceof Domain.Measured domain) {
            Interval only = Interval.point(number.amount());
            readings.computeIfPresent(
                id,
                (same, reading) ->
                    reading.within(new Domain.Measured(domain.unit(), only, domain.resolution())));
          }
        });
    return new KnowledgeBase(
        kb.handbook(),
        kb.equipment(),
        readings,
        kb.limits(),
        kb.faults(),
        kb.symptoms(),
        kb.nevers(),
        kb.cases(),
        kb.cautions(),
        kb.parts(),
        kb.guides(),
        kb.setUps(),
        kb.charts(),
        kb.sequences(),
        kb.wordbook());
  }

  /**
   * Bayes: how often something is told at all, times the part of its situations, on such a machine,
   * that agree with the case.
   */
  private static List<Result> weighed(
      SymptomSpace here, SymptomSpace all, List<Result> told, List<Build> builds) {
    Space whole = all.space();
    int machines = whole.diagrams().literal(0, whole.axes().get(0).where(c -> isOneOf(c, builds)));
    Map<SortedSet<Answer>, BigInteger> before = new HashMap<>();
    told.forEach(
        result ->
            before.put(
                result.answers(),
                whole.distinguishable(whole.diagrams().and(result.situations(), machines))));
    return Results.of(here).stream()
        .map(
            result ->
                new Result(
                    result.answers(),
                    result.situations(),
                    result.weight()
                        * part(
                            here.space().distinguishable(result.situations()),
                            before.getOrDefault(result.answers(), BigInteger.ZERO))))
        .toList();
  }

  private static boolean isOneOf(Cell cell, List<Build> builds) {
    return ((Cell.Builds) cell).builds().stream().anyMatch(builds::contains);
  }

  /** All of it where only a reading that cannot be taken brings it about. */
  private static double part(BigInteger part, BigInteger whole) {
    return part.compareTo(whole) >= 0 ? 1 : Ratios.of(part, whole);
  }

  /** Whether something can be as given at all. */
  boolean isPossible() {
    return space.possible() != Diagrams.NONE;
  }
}
