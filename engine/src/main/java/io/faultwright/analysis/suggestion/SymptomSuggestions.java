package io.faultwright.analysis.suggestion;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.analysis.coverage.AimSpace;
import io.faultwright.analysis.coverage.CoverageAnalysis;
import io.faultwright.analysis.coverage.Edge;
import io.faultwright.analysis.coverage.Edges;
import io.faultwright.analysis.coverage.Effect;
import io.faultwright.analysis.coverage.Pairs;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.coverage.SituationAim;
import io.faultwright.analysis.coverage.SymptomAims.RuleAims;
import io.faultwright.analysis.coverage.Tests;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Witness;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Cases that would close what is open in one symptom. */
final class SymptomSuggestions {
  private final Judge judge;
  private final Symptom symptom;
  private final CoverageAnalysis coverage;
  private final Edges edges;
  private final Shown shown;
  private final Completion completion;
  private final FairShare share = new FairShare();
  private final List<Sighting> present;
  private final Deadline deadline;
  private final List<Draft> drafts = new ArrayList<>();
  private final BitSet known;
  private final Map<Sighting, BitSet> shownBy = new IdentityHashMap<>();

  /**
   * @param present what is recorded already, in all symptoms
   */
  SymptomSuggestions(
      Judge judge,
      Symptom symptom,
      CoverageAnalysis coverage,
      boolean three,
      Collection<Sighting> present,
      Deadline deadline) {
    this.deadline = deadline;
    this.judge = judge;
    this.symptom = symptom;
    this.coverage = coverage;
    this.edges = new Edges(judge.knowledge(), symptom.id(), three);
    this.shown = new Shown(coverage.aims());
    this.present = List.copyOf(present);
    List<Sighting> own = present.stream().filter(this::isHere).toList();
    this.completion =
        new Completion(judge, symptom, own.stream().map(one -> one.observed().given()).toList());
    own.forEach(one -> share.count(one.observed().builds()));
    this.known = shown.by(present);
  }

  private boolean isHere(Sighting one) {
    return one.symptom().equals(symptom.id());
  }

  /** What was drafted so far, in the order in which it was needed. */
  List<Draft> drafts() {
    return drafts;
  }

  /** What is recorded or drafted. */
  List<Sighting> all() {
    return all(drafts);
  }

  private List<Sighting> all(List<Draft> some) {
    return Stream.concat(present.stream(), some.stream().map(Draft::sighting)).toList();
  }

  /** Drafts cases that show the open tests decide, at boundaries where they can. */
  void closeEffects() {
    for (RuleAims aims : coverage.aims().rules()) {
      List<Effect> open = Shown.open(aims.effects(), all());
      if (!open.isEmpty()) {
        close(aims, open);
      }
    }
  }

  private void close(RuleAims aims, List<Effect> open) {
    List<Test> tests = Tests.distinct(aims.rule().when());
    List<Edge> beside = openEdges(tests);
    AimSpace space =
        AimSpace.of(
            judge.knowledge(),
            symptom,
            aims.rule(),
            beside.stream().map(Edge::where).toList(),
            deadline);
    List<Sighting> own = all().stream().filter(this::isHere).toList();
    Set<Outcomes> outcomes = new DecidingOutcomes(space, tests, own).fewest(in(space, aims, open));
    for (Outcomes one : outcomes) {
      draft(space, where(space, tests, one), beside);
    }
  }

  /** The same effects, looked for in the space of the rule alone. */
  private static List<Effect> in(AimSpace space, RuleAims aims, List<Effect> open) {
    return open.stream().map(effect -> effect.in(space, aims.rule())).toList();
  }

  private static int where(AimSpace space, List<Test> tests, Outcomes outcomes) {
    int where = space.workable();
    for (int test = 0; test < tests.size(); test++) {
      int outcome =
          outcomes.met(test) ? space.whereTrue(tests.get(test)) : space.whereFalse(tests.get(test));
      where = space.diagrams().and(where, outcome);
    }
    return where;
  }

  private List<Edge> openEdges(List<Test> tests) {
    List<Sighting> all = all();
    return tests.stream()
        .filter(test -> test.pattern() instanceof InInterval)
        .flatMap(test -> edges.ofStretch(test).stream())
        .filter(edge -> all.stream().noneMatch(one -> isHere(one) && shows(edge, one)))
        .toList();
  }

  private static boolean shows(Edge edge, Sighting one) {
    return one.worked() && edge.shows().test(one);
  }

  private void draft(AimSpace space, int where, List<Edge> beside) {
    int aimed = where;
    List<Edge> open =
        beside.stream()
            .filter(edge -> drafts.stream().noneMatch(draft -> shows(edge, draft.sighting())))
            .toList();
    for (Edge edge : open) {
      int closer = space.diagrams().and(aimed, space.whereTrue(edge.where()));
      aimed = closer == Diagrams.NONE ? aimed : closer;
    }
    if (aimed != Diagrams.NONE) {
      draft(share.pick(space, aimed));
    }
  }

  /** Drafts cases for what a single case can show. */
  void closeSituations(Set<Criterion> wanted) {
    List<SituationAim> open = new ArrayList<>();
    List<Sighting> all = all();
    coverage.aims().situations().stream()
        .filter(aim -> wanted.contains(aim.goal().criterion()) && !aim.isShownBy(all))
        .forEach(open::add);
    while (!open.isEmpty()) {
      SituationAim first = open.get(0);
      Situation start = share.pick(first.space(), closer(first, open));
      draft(joined(start, open.subList(1, open.size())));
      Sighting last = drafts.get(drafts.size() - 1).sighting();
      open.removeIf(aim -> aim == first || aim.shows().test(last));
    }
  }

  /** With as much else that is open in the same space as goes together. */
  private static int closer(SituationAim first, List<SituationAim> open) {
    Diagrams diagrams = first.space().diagrams();
    int where = first.where();
    for (SituationAim other : open) {
      if (other.space() == first.space()) {
        int both = diagrams.and(where, other.where());
        where = both == Diagrams.NONE ? where : both;
      }
    }
    return where;
  }

  /** With the readings of other open goals that stand beside them and contradict nothing. */
  private Situation joined(Situation start, List<SituationAim> open) {
    Situation joined = start;
    List<Build> builds = completion.sighting(start).observed().builds();
    for (SituationAim other : open) {
      int there = other.space().on(other.where(), builds);
      if (builds.size() == 1
          && there != Diagrams.NONE
          && !other.shows().test(completion.sighting(joined))) {
        joined = joined(joined, new Witness(other.space().space()).of(there), other);
      }
    }
    return joined;
  }

  private Situation joined(Situation one, Situation more, SituationAim aim) {
    if (more.readings().entrySet().stream()
        .anyMatch(
            each ->
                one.readings().containsKey(each.getKey())
                    && !one.readings().get(each.getKey()).equals(each.getValue()))) {
      return one;
    }
    SortedMap<String, Value> readings = new TreeMap<>(one.readings());
    readings.putAll(more.readings());
    Situation both = new Situation(one.equipment(), readings);
    Sighting sighting = completion.sighting(both);
    BitSet before = shown.by(completion.sighting(one));
    return aim.shows().test(sighting) && shown.all(before, sighting) ? both : one;
  }

  /** Completes a situation and keeps it, with what it shows that nothing did so far. */
  private void draft(Situation start) {
    BitSet fresh = shown.by(completion.sighting(start));
    BitSet needed = (BitSet) fresh.clone();
    needed.andNot(known);
    BitSet kept = needed.isEmpty() ? fresh : needed;
    add(completion.complete(start, one -> shown.all(kept, one)));
  }

  private void add(Situation situation) {
    Sighting one = completion.sighting(situation);
    BitSet closes = shown.by(one);
    closes.andNot(known);
    known.or(closes);
    share.count(one.observed().builds());
    drafts.add(new Draft(one, closes.stream().mapToObj(shown::words).toList(), false));
  }

  /** Drafts cases in which the open pairs of readings stand together. */
  void closePairs() {
    Pairs pairs = coverage.pairs();
    BitSet open = (BitSet) pairs.possible().clone();
    open.andNot(pairs.shownBy(all()));
    AimSpace space = AimSpace.whole(pairs.rules());
    for (int[] row : PairRows.of(new PairProblem(pairs, open).problem())) {
      Situation situation = share.pick(space, pairs.where(row));
      Predicate<Sighting> keeps = one -> isAt(pairs.levels(one), row);
      Sighting drafted = completion.sighting(completion.trimmed(situation, keeps));
      BitSet fresh = pairs.shownBy(List.of(drafted));
      fresh.and(open);
      open.andNot(fresh);
      share.count(drafted.observed().builds());
      drafts.add(new Draft(drafted, List.of(fresh.cardinality() + " pairs of readings"), true));
    }
  }

  private static boolean isAt(int[] levels, int[] row) {
    for (int factor = 0; factor < row.length; factor++) {
      if (row[factor] >= 0 && row[factor] != levels[factor]) {
        return false;
      }
    }
    return true;
  }

  /** Leaves out drafts without which everything is shown all the same. */
  void dropSuperfluous() {
    for (int i = drafts.size() - 1; i >= 0; i--) {
      List<Draft> fewer = new ArrayList<>(drafts);
      fewer.remove(i);
      if (isSuperfluous(drafts.get(i), all(fewer))) {
        drafts.remove(i);
      }
    }
  }

  private boolean isSuperfluous(Draft draft, List<Sighting> others) {
    BitSet own = shown.by(draft.sighting());
    BitSet rest = new BitSet();
    for (Sighting other : others) {
      rest.or(shownBy.computeIfAbsent(other, shown::by));
    }
    own.andNot(rest);
    return own.isEmpty()
        && shown.stillTogether(draft.sighting(), others)
        && (!draft.pairs() || shownPairs(draft, others));
  }

  private boolean shownPairs(Draft draft, List<Sighting> others) {
    BitSet own = coverage.pairs().shownBy(List.of(draft.sighting()));
    own.and(coverage.pairs().possible());
    own.andNot(coverage.pairs().shownBy(others));
    return own.isEmpty();
  }

  /** Takes over the situations that show mistakes no case notices. */
  void closeMutants(Collection<MutantStatus> mutants) {
    MutantDrafts.of(judge, mutants).getOrDefault(symptom.id(), List.of()).forEach(drafts::add);
  }
}
