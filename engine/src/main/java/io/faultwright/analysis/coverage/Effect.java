package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Goal;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Rule;
import io.faultwright.model.Truth;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;

/**
 * The goal that a test of a rule decides the rule on its own. Where some two situations differ in
 * the outcome of no other test (unique cause), two such cases are asked for; where readings hang
 * together so that there are none, two cases in which the test decides do (masking).
 */
public final class Effect implements Aim {
  private final Goal goal;
  private final AimSpace space;
  private final Deciding deciding;
  private final List<Test> others;
  private final int whereTrue;
  private final int whereFalse;
  private final boolean unique;
  private final SortedSet<Build> possible;

  /**
   * @param others the other tests of the rule
   */
  Effect(Goal goal, AimSpace space, Deciding deciding, List<Test> others) {
    this.goal = goal;
    this.space = space;
    this.deciding = deciding;
    this.others = List.copyOf(others);
    this.whereTrue = deciding.where(space, true);
    this.whereFalse = deciding.where(space, false);
    this.unique = pairExists(whereTrue, whereFalse, 0);
    this.possible = space.builds(whereTrue);
    possible.retainAll(space.builds(whereFalse));
  }

  /** Whether two situations, one of each set, differ in the outcome of no further test. */
  private boolean pairExists(int one, int other, int from) {
    if (one == Diagrams.NONE || other == Diagrams.NONE) {
      return false;
    }
    if (from == others.size()) {
      return true;
    }
    Diagrams diagrams = space.diagrams();
    int met = space.whereTrue(others.get(from));
    int missed = space.whereFalse(others.get(from));
    return pairExists(diagrams.and(one, met), diagrams.and(other, met), from + 1)
        || pairExists(diagrams.and(one, missed), diagrams.and(other, missed), from + 1);
  }

  /** The same goal, looked for in another space of the same rule. */
  public Effect in(AimSpace other, Rule rule) {
    return new Effect(goal, other, Deciding.of(rule.when(), deciding.test()), others);
  }

  /** Whether any two cases can show it. */
  boolean isReachable() {
    return whereTrue != Diagrams.NONE && whereFalse != Diagrams.NONE;
  }

  /** Whether two situations show it that differ in no other test. */
  public boolean isUnique() {
    return unique;
  }

  /** The situations in which the test decides, coming out as asked for. */
  public int where(boolean value) {
    return value ? whereTrue : whereFalse;
  }

  /** The test that decides. */
  public Test test() {
    return deciding.test();
  }

  @Override
  public Goal goal() {
    return goal;
  }

  @Override
  public SortedSet<Build> possible() {
    return possible;
  }

  @Override
  public SortedSet<Build> alike(Sighting one) {
    return space.alike(one.observed().builds());
  }

  @Override
  public boolean isShownBy(Collection<Sighting> cases) {
    List<Sighting> met = shown(cases, true);
    List<Sighting> missed = shown(cases, false);
    return met.stream().anyMatch(one -> missed.stream().anyMatch(other -> isPair(one, other)));
  }

  private List<Sighting> shown(Collection<Sighting> cases, boolean value) {
    return cases.stream()
        .filter(one -> one.symptom().equals(goal.symptom()))
        .filter(one -> deciding.isShownBy(one, value))
        .toList();
  }

  /** Whether a case shows the test decide, coming out as asked for. */
  public boolean isShownBy(Sighting one, boolean value) {
    return deciding.isShownBy(one, value);
  }

  /** What is not known in one of the cases does not matter there, and can be as in the other. */
  private boolean isPair(Sighting one, Sighting other) {
    return !unique || others.stream().noneMatch(test -> differ(test, one, other));
  }

  private static boolean differ(Test test, Sighting one, Sighting other) {
    Truth here = one.observed().met(test);
    Truth there = other.observed().met(test);
    return here != there && here != Truth.UNKNOWN && there != Truth.UNKNOWN;
  }
}
