package io.faultwright.analysis.tolerance;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * Real situations that stand for all that lie within the tolerances of a given one: one for every
 * way in which the tests of a symptom can come out there. Exact, not a sample.
 *
 * <p>Only few tests can come out in more than one way, those whose threshold or limit lies within a
 * tolerance. A small {@link Space} of these tests, cut down to the box, says which of their truths
 * go together, and a {@link Witness} of each such combination is a point of it.
 */
public final class Outlook {
  /** So many tests in doubt, or combinations of them, are the most that is worked out. */
  static final int MOST = 512;

  private static final int MOST_TESTS = 24;
  private static final Place NOWHERE = new Place("", 1, 1, 1);

  private final KnowledgeBase knowledge;
  private final OpenTests tests;

  public Outlook(KnowledgeBase knowledge, Symptom symptom) {
    this.knowledge = knowledge;
    this.tests = new OpenTests(knowledge, symptom);
  }

  /** The tests that may come out in more than one way on a build; mostly none. */
  public List<Test> open(ToleranceBox box, Build build) {
    return tests.within(box, build);
  }

  /**
   * The situations.
   *
   * @param open what {@link #open} says, at least one
   * @return empty where there would be too many
   */
  public Optional<List<Situation>> points(
      Situation given, ToleranceBox box, Build build, List<Test> open) {
    if (open.size() > MOST_TESTS) {
      return Optional.empty();
    }
    SortedSet<String> readings = tests.observed(open, build);
    List<Condition> limits = readings.stream().map(id -> inside(id, box, build)).toList();
    List<Condition> asked = new ArrayList<>(open);
    asked.addAll(limits);
    Space space = Space.of(knowledge, List.of(build), asked, List.of());
    int within =
        limits.stream()
            .map(condition -> space.truth(condition).isTrue())
            .reduce(space.consistent(), space.diagrams()::and);
    Optional<List<Integer>> parts = split(space, within, open);
    Witness witness = new Witness(space);
    return parts.map(
        all -> all.stream().map(part -> with(given, witness.of(part), readings)).toList());
  }

  private static Condition inside(String reading, ToleranceBox box, Build build) {
    return new Test(reading, new InInterval(box.reach(reading, build).orElseThrow()), NOWHERE);
  }

  /** The set split by what each test comes out as: true, unknown for want of a figure, or false. */
  private static Optional<List<Integer>> split(Space space, int within, List<Test> open) {
    Diagrams diagrams = space.diagrams();
    List<Integer> parts = List.of(within);
    for (Test test : open) {
      int yes = space.truth(test).isTrue();
      int maybe = space.truth(test).mayBeTrue();
      List<Integer> finer = new ArrayList<>();
      for (int part : parts) {
        finer.add(diagrams.and(part, yes));
        finer.add(diagrams.minus(diagrams.and(part, maybe), yes));
        finer.add(diagrams.minus(part, maybe));
      }
      finer.removeIf(part -> part == Diagrams.NONE);
      if (finer.size() > MOST) {
        return Optional.empty();
      }
      parts = finer;
    }
    return Optional.of(parts);
  }

  /** What is given, with other values for the readings in doubt. */
  private static Situation with(Situation given, Situation point, SortedSet<String> readings) {
    SortedMap<String, Value> values = new TreeMap<>(given.readings());
    readings.forEach(reading -> values.put(reading, point.readings().get(reading)));
    return new Situation(given.equipment(), values);
  }
}
