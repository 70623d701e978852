package io.faultwright.analysis.quiz;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.Choice.GoOn;
import io.faultwright.quiz.Choice.Holds;
import io.faultwright.quiz.Choice.Outcome;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.NearMiss.Why;
import io.faultwright.quiz.Stem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Items that ask what must be right before a symptom is worked, and what follows where not. */
final class FirstDrafts {
  private final Ground ground;
  private final Bases bases;
  private final Assembly assembly;
  private final List<Symptom.First> firsts;

  FirstDrafts(Ground ground, Bases bases, Assembly assembly) {
    this.ground = ground;
    this.bases = bases;
    this.assembly = assembly;
    this.firsts = ground.symptom().first();
  }

  List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
    for (int position = 0; position < firsts.size(); position++) {
      int at = position;
      drafts.add(draft("what", at, "", (seed, dice) -> what(at, seed, dice)));
      for (List<Build> group : ground.groups()) {
        drafts.add(failing(at, group));
      }
    }
    return drafts;
  }

  private Draft failing(int at, List<Build> group) {
    String machine = group.get(0).toString();
    Dice own = Dice.of("first", ground.symptom().id(), at, machine);
    Build build = own.one(group);
    Answer told = new Answer.OfReferral(firsts.get(at).otherwise());
    int region = ground.diagrams().and(ground.symptomSpace().referrals().get(at), ground.on(build));
    Optional<Basis> basis =
        ground.single().stream()
            .filter(result -> Ground.only(result).equals(told) && region != Diagrams.NONE)
            .findFirst()
            .flatMap(result -> bases.in(region, result, build, true, own));
    return draft(
        "fails", at, machine, (seed, dice) -> basis.flatMap(found -> fails(at, found, seed, dice)));
  }

  private Draft draft(
      String shape, int at, String machine, BiFunction<Long, Dice, Optional<Made>> make) {
    String key =
        String.join(
            "|",
            ItemKind.WHAT_FIRST.slug(),
            ground.symptom().id(),
            shape,
            Integer.toString(at),
            machine);
    return new OfFirst(key, at, make);
  }

  /**
   * What an item is made of.
   *
   * @param points how hard it is
   */
  private record Made(
      Stem stem,
      Content right,
      List<Content> wrong,
      Map<Content, NearMiss> near,
      List<String> deciding,
      int points) {}

  /** What must be right. */
  private Optional<Made> what(int at, long seed, Dice dice) {
    Condition right = firsts.get(at).when();
    Map<Content, NearMiss> near = new LinkedHashMap<>();
    right.tests().findFirst().ifPresent(test -> opposite(test, right, near));
    List<Content> others = new ArrayList<>();
    ground.symptom().rules().values().stream()
        .flatMap(rule -> rule.when().tests())
        .filter(test -> isOther(test, at))
        .forEach(test -> near.putIfAbsent(holds(test), new NearMiss(Why.LATER, "")));
    ground.kb().symptoms().values().stream()
        .flatMap(symptom -> symptom.first().stream())
        .filter(first -> first.when().tests().allMatch(test -> isForeign(test)))
        .forEach(first -> others.add(new Holds(first.when())));
    Map<Content, NearMiss> one = differing(near, Dice.of("what", ground.symptom().id(), at, seed));
    return Optional.of(
        new Made(
            new Stem.WhatFirst(ground.symptom().id()),
            new Holds(right),
            Assembly.wrong(one, others.stream().distinct().toList(), dice),
            one,
            subjects(right),
            1 + one.size()));
  }

  /** Of the conditions on one reading only one. */
  private static Map<Content, NearMiss> differing(Map<Content, NearMiss> near, Dice dice) {
    Map<Object, Content> of = new LinkedHashMap<>();
    dice.shuffled(List.copyOf(near.keySet())).forEach(one -> of.putIfAbsent(subject(one), one));
    Map<Content, NearMiss> left = new LinkedHashMap<>(near);
    left.keySet().retainAll(of.values());
    return left;
  }

  private static Object subject(Content content) {
    return subjects(((Holds) content).condition());
  }

  private static List<String> subjects(Condition condition) {
    return condition.tests().map(Test::subject).distinct().toList();
  }

  private static Content holds(Test test) {
    return new Holds(test);
  }

  private void opposite(Test test, Condition right, Map<Content, NearMiss> near) {
    Condition opposite = Opposite.of(test);
    if (right.equals(test) || right instanceof Condition.All all && all.parts().size() == 1) {
      near.put(new Holds(opposite), new NearMiss(Why.OTHER_VALUE, test.subject()));
    }
  }

  /** Whether a condition of a rule is about a reading, and need not hold before. */
  private boolean isOther(Test test, int at) {
    boolean same =
        firsts.stream().flatMap(first -> first.when().tests()).anyMatch(t -> about(t, test));
    boolean complaint = ground.symptom().recognise().tests().anyMatch(t -> about(t, test));
    Diagrams diagrams = ground.diagrams();
    return !same
        && !complaint
        && ground.kb().readings().containsKey(test.subject())
        && !diagrams.within(ground.symptomSpace().workable(), ground.space().truth(test).isTrue());
  }

  private static boolean about(Test one, Test other) {
    return one.subject().equals(other.subject());
  }

  /** Whether nothing in the symptom asks about it. */
  private boolean isForeign(Test test) {
    return ground.kb().readings().containsKey(test.subject())
        && ground.space().position(new Axis.OfReading(test.subject())).isEmpty()
        && ground.space().position(new Axis.OfSide(test.subject())).isEmpty();
  }

  /** What follows where it is not right. */
  private Optional<Made> fails(int at, Basis basis, long seed, Dice dice) {
    Content right = new Outcome(Ground.only(basis.result()));
    Map<Content, NearMiss> near = new LinkedHashMap<>();
    near.put(new GoOn(), new NearMiss(Why.ONE_READING, basis.needed().get(0)));
    List<Content> others = new ArrayList<>();
    ground.kb().symptoms().values().stream()
        .flatMap(symptom -> symptom.first().stream())
        .map(first -> new Outcome(new Answer.OfReferral(first.otherwise())))
        .filter(outcome -> !outcome.answer().name().equals(ground.symptom().id()))
        .forEach(others::add);
    faults(basis.build()).forEach(others::add);
    others.remove(right);
    List<Content> distinct = others.stream().distinct().filter(one -> !one.equals(right)).toList();
    List<Content> wrong =
        Assembly.wrong(near, distinct, Dice.of("fails", ground.symptom().id(), at, seed));
    return bases
        .figures()
        .vary(basis.full(), basis.order(), dice)
        .filter(varied -> bases.says(varied, basis.order(), basis.result()))
        .map(varied -> made(basis, varied, right, wrong, near));
  }

  private static Made made(
      Basis basis,
      Situation varied,
      Content right,
      List<Content> wrong,
      Map<Content, NearMiss> near) {
    return new Made(
        new Stem.FirstFails(((Outcome) right).answer().name(), basis.shown(varied)),
        right,
        wrong,
        near,
        basis.needed(),
        basis.order().size() + near.size());
  }

  private List<Content> faults(Build build) {
    int machine = ground.diagrams().and(ground.symptomSpace().workable(), ground.on(build));
    return ground.met(machine).stream()
        .map(Result::answers)
        .flatMap(Set::stream)
        .filter(Answer.OfFault.class::isInstance)
        .<Content>map(Outcome::new)
        .limit(2)
        .toList();
  }

  /** An item about one of the things that must be right. */
  private final class OfFirst implements Draft {
    private final String key;
    private final int at;
    private final BiFunction<Long, Dice, Optional<Made>> make;

    OfFirst(String key, int at, BiFunction<Long, Dice, Optional<Made>> make) {
      this.key = key;
      this.at = at;
      this.make = make;
    }

    @Override
    public ItemKind kind() {
      return ItemKind.WHAT_FIRST;
    }

    @Override
    public String symptom() {
      return ground.symptom().id();
    }

    @Override
    public String theme() {
      return symptom() + "/first/" + at;
    }

    @Override
    public String key() {
      return key;
    }

    @Override
    public Optional<Item> item(long seed, int participant) {
      Dice dice = Dice.of(key, seed, participant);
      return make.apply(seed, dice)
          .filter(made -> made.wrong().size() >= Item.FEWEST - 1)
          .map(made -> item(made, dice));
    }

    private Item item(Made made, Dice dice) {
      Signed footing = new Signed(SignedKind.SYMPTOM, symptom());
      Map<Content, NearMiss> missed = new LinkedHashMap<>(made.near());
      missed.keySet().retainAll(made.wrong());
      Stem stem =
          made.stem() instanceof Stem.FirstFails fails
              ? new Stem.FirstFails(symptom(), fails.machine())
              : made.stem();
      return new Item(
          id(),
          stem,
          Assembly.choices(made.right(), made.wrong(), missed, dice),
          new Origin(symptom(), Sorted.set(Set.of()), footing, assembly.meaning(footing)),
          new Explanation(
              made.deciding().stream().distinct().collect(Collectors.toList()),
              Link.symptom(symptom())),
          Rating.of(made.points()));
    }
  }
}
