package io.faultwright.analysis.quiz;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.quiz.ChartPath.Stop;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Rule;
import io.faultwright.model.Signed;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.Choice.Take;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.NearMiss.Why;
import io.faultwright.quiz.Shown;
import io.faultwright.quiz.Stem;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Items that ask which reading separates two faults that look alike so far. */
final class SeparationDrafts {
  private final Ground ground;
  private final ChartPath path;
  private final Bases bases;
  private final Assembly assembly;
  private final Map<String, Optional<Basis>> known = new HashMap<>();

  SeparationDrafts(Ground ground, ChartPath path, Bases bases, Assembly assembly) {
    this.ground = ground;
    this.path = path;
    this.bases = bases;
    this.assembly = assembly;
  }

  List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
    for (List<Build> group : ground.groups()) {
      List<Result> faults =
          ground.single().stream()
              .filter(result -> Ground.only(result) instanceof Answer.OfFault)
              .filter(result -> on(result, group.get(0)) != Diagrams.NONE)
              .toList();
      for (Result one : faults) {
        faults.stream()
            .filter(other -> Ground.only(one).compareTo(Ground.only(other)) != 0)
            .forEach(other -> drafts.add(new OfPair(one, other, group)));
      }
    }
    return drafts;
  }

  /** The situation with a fault on a group of machines; the same for every other fault. */
  private Optional<Basis> basis(Result one, List<Build> group) {
    String key =
        String.join(
            "|", "apart", ground.symptom().id(), Ground.only(one).name(), group.get(0).toString());
    Optional<Basis> basis = known.get(key);
    if (basis == null) {
      Dice dice = Dice.of(key);
      Build build = dice.one(group);
      basis = bases.in(on(one, build), one, build, true, dice);
      known.put(key, basis);
    }
    return basis;
  }

  private int on(Result result, Build build) {
    return ground.diagrams().and(result.situations(), ground.on(build));
  }

  /** The situations divided by what becomes known, once some readings more are shown. */
  private List<Integer> parts(int situations, SortedSet<String> before, Set<String> more) {
    Set<String> after = new TreeSet<>(before);
    after.addAll(more);
    List<Integer> parts = List.of(situations);
    for (int axis = 1; axis < ground.space().axes().size(); axis++) {
      SortedSet<String> needs = ground.needs(axis);
      if (after.containsAll(needs) && !before.containsAll(needs)) {
        parts = split(parts, axis);
      }
    }
    return parts;
  }

  /** A reading with all that its limits follow. */
  private Set<String> whole(String reading) {
    Set<String> whole = new TreeSet<>(Set.of(reading));
    for (Axis.Subject subject : List.of(new Axis.OfReading(reading), new Axis.OfSide(reading))) {
      ground.space().position(subject).ifPresent(axis -> whole.addAll(ground.needs(axis)));
    }
    return whole;
  }

  private List<Integer> split(List<Integer> parts, int axis) {
    Diagrams diagrams = ground.diagrams();
    List<Integer> finer = new ArrayList<>();
    for (int part : parts) {
      for (int cell = 0; cell < ground.space().axes().get(axis).cells().size(); cell++) {
        BitSet only = new BitSet();
        only.set(cell);
        int inside = diagrams.and(part, diagrams.literal(axis, only));
        if (inside != Diagrams.NONE) {
          finer.add(inside);
        }
      }
    }
    return finer;
  }

  /** Two faults on a group of machines, the first of which it is. */
  private final class OfPair implements Draft {
    private final Result one;
    private final Result other;
    private final List<Build> group;
    private final FaultPair faults;
    private Optional<Optional<Found>> found = Optional.empty();

    OfPair(Result one, Result other, List<Build> group) {
      this.one = one;
      this.other = other;
      this.group = group;
      this.faults = FaultPair.of(Ground.only(one).name(), Ground.only(other).name());
    }

    /**
     * What is shown, and what separates.
     *
     * @param full a situation with the first fault
     * @param shown ids of the readings before the one that separates
     * @param right id of that one
     * @param near readings that separate in some situations only
     * @param others readings that tell nothing of the two
     */
    private record Found(
        Situation full,
        List<String> shown,
        String right,
        Map<Content, NearMiss> near,
        List<Content> others) {}

    @Override
    public ItemKind kind() {
      return ItemKind.WHAT_SEPARATES;
    }

    @Override
    public String symptom() {
      return ground.symptom().id();
    }

    @Override
    public String theme() {
      return symptom() + "/" + faults.one() + "/" + faults.other();
    }

    @Override
    public String key() {
      return String.join(
          "|", kind().slug(), theme(), Ground.only(one).name(), group.get(0).toString());
    }

    private Optional<Found> found() {
      if (found.isEmpty()) {
        found = Optional.of(basis(one, group).flatMap(this::separating));
      }
      return found.get();
    }

    /** The first reading on the chart's way before which both are open, and after which one is. */
    private Optional<Found> separating(Basis basis) {
      List<String> before = new ArrayList<>();
      for (Stop stop : path.of(basis.build(), ground.cells(basis.full()))) {
        Optional<Found> here = at(stop, List.copyOf(before), basis);
        if (here.isPresent()) {
          return here;
        }
        stop.takes().stream().filter(id -> !before.contains(id)).forEach(before::add);
      }
      return Optional.empty();
    }

    private Optional<Found> at(Stop stop, List<String> before, Basis basis) {
      Set<String> shown = new LinkedHashSet<>(before);
      stop.takes().stream().filter(id -> !id.equals(stop.subject())).forEach(shown::add);
      shown.retainAll(basis.full().readings().keySet());
      boolean direct = stop.takes().contains(stop.subject());
      int open = open(Ground.showing(basis.full(), shown));
      SortedSet<String> known = new TreeSet<>(shown);
      if (!direct
          || before.size() < 2
          || !isBoth(open)
          || !separates(open, known, stop.subject())) {
        return Optional.empty();
      }
      Map<Content, NearMiss> near = new LinkedHashMap<>();
      List<Content> others = new ArrayList<>();
      for (String reading : candidates(basis, shown, stop.subject())) {
        List<Integer> parts = parts(open, known, whole(reading));
        if (parts.stream().anyMatch(this::isBoth)) {
          if (parts.stream().allMatch(this::isBoth)) {
            others.add(new Take(reading));
          } else {
            near.put(new Take(reading), new NearMiss(Why.NOT_ALWAYS, ""));
          }
        }
      }
      return Optional.of(new Found(basis.full(), List.copyOf(shown), stop.subject(), near, others));
    }

    /** Situations with one of the two that agree with what is shown. */
    private int open(Situation shown) {
      Diagrams diagrams = ground.diagrams();
      return diagrams.and(
          ground.agreeing(shown), diagrams.or(one.situations(), other.situations()));
    }

    private boolean isBoth(int situations) {
      Diagrams diagrams = ground.diagrams();
      return diagrams.and(situations, one.situations()) != Diagrams.NONE
          && diagrams.and(situations, other.situations()) != Diagrams.NONE;
    }

    private boolean separates(int open, SortedSet<String> known, String reading) {
      return parts(open, known, whole(reading)).stream().noneMatch(this::isBoth);
    }

    /** Readings of the symptom that the machine has and that are not shown. */
    private List<String> candidates(Basis basis, Set<String> shown, String right) {
      Set<String> candidates = new LinkedHashSet<>(path.subjects(basis.build()));
      ground.symptom().rules().values().stream()
          .flatMap(rule -> rule.when().tests())
          .map(Condition.Test::subject)
          .filter(ground.kb().readings()::containsKey)
          .forEach(candidates::add);
      ground.symptom().recognise().tests().forEach(test -> candidates.remove(test.subject()));
      candidates.removeIf(
          id ->
              shown.contains(id)
                  || id.equals(right)
                  || ground.kb().readings().get(id).derived().isPresent()
                  || !ground.has(basis.build(), id));
      return List.copyOf(candidates);
    }

    @Override
    public Optional<Item> item(long seed, int participant) {
      return found().flatMap(here -> item(here, seed, participant));
    }

    private Optional<Item> item(Found here, long seed, int participant) {
      Dice dice = Dice.of(key(), seed, participant);
      List<Content> wrong = Assembly.wrong(here.near(), here.others(), Dice.of(key(), seed));
      return bases
          .figures()
          .vary(here.full(), here.shown(), dice)
          .filter(varied -> wrong.size() >= Item.FEWEST - 1)
          .map(varied -> assembled(here, varied, wrong, dice));
    }

    private Item assembled(Found here, Situation varied, List<Content> wrong, Dice dice) {
      Shown shown = new Shown(Ground.showing(varied, here.shown()), here.shown());
      Map<Content, NearMiss> missed = new LinkedHashMap<>(here.near());
      missed.keySet().retainAll(wrong);
      SortedSet<String> rules = rules();
      Signed footing = Signed.rule(symptom(), rules.first());
      return new Item(
          id(),
          new Stem.WhatSeparates(symptom(), shown, faults),
          Assembly.choices(new Take(here.right()), wrong, missed, dice),
          new Origin(symptom(), rules, footing, assembly.meaning(footing)),
          new Explanation(List.of(here.right()), Link.reading(here.right())),
          Rating.of(here.shown().size() + missed.size() + 2));
    }

    /** The rules that tell the one or the other. */
    private SortedSet<String> rules() {
      SortedSet<String> rules = new TreeSet<>();
      for (Rule rule : ground.symptom().rules().values()) {
        if (rule.conclusion().answers().contains(Ground.only(one))
            || rule.conclusion().answers().contains(Ground.only(other))) {
          rules.add(rule.id());
        }
      }
      return Sorted.set(rules);
    }
  }
}
