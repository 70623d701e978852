package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Goal;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Everything that the cases of a symptom should show, pairs of readings left out. */
public final class SymptomAims {
  private final KnowledgeBase kb;
  private final AimSpace whole;
  private final Symptom symptom;
  private final Edges edges;
  private final GoalWords words;
  private final Set<String> seen = new HashSet<>();
  private final Set<String> limits;
  private final Deadline deadline;
  private final List<SituationAim> situations = new ArrayList<>();
  private final List<RuleAims> rules = new ArrayList<>();

  /**
   * @param whole all situations of the symptom
   * @param three whether a threshold has three boundary values, or two
   * @param limits boundaries of limits that another symptom has already; is added to
   */
  SymptomAims(
      KnowledgeBase kb,
      AimSpace whole,
      Symptom symptom,
      boolean three,
      Set<String> limits,
      Deadline deadline) {
    this.deadline = deadline;
    this.whole = whole;
    this.limits = limits;
    this.kb = kb;
    this.symptom = symptom;
    this.edges = new Edges(kb, symptom.id(), three);
    this.words = new GoalWords(kb);
    before();
    symptom.rules().values().forEach(this::ofRule);
  }

  /**
   * What one rule should be seen to do.
   *
   * @param rule the rule
   * @param effects for each of its tests that can decide, in the written order
   */
  public record RuleAims(Rule rule, List<Effect> effects) {}

  /** Those that one case can show. */
  public List<SituationAim> situations() {
    return situations;
  }

  public List<RuleAims> rules() {
    return rules;
  }

  /** All of them. */
  public List<Aim> all() {
    List<Aim> all = new ArrayList<>(situations);
    rules.forEach(rule -> all.addAll(rule.effects()));
    all.addAll(faults());
    return all;
  }

  private void before() {
    for (Symptom.First first : symptom.first()) {
      for (Test test : Tests.distinct(first.when())) {
        outcomes(whole.possible(), test, Optional.empty());
        edges(test, false);
      }
    }
  }

  private void ofRule(Rule rule) {
    List<Test> tests = Tests.distinct(rule.when());
    add(
        goal(Criterion.RULES, rule, "rule `" + rule.id() + "` fires", rule.place()),
        whole,
        whole.firing(rule.id()),
        one -> isHere(one) && one.ruling().fired().contains(rule.id()));
    for (Test test : tests) {
      outcomes(whole.workable(), test, Optional.of(rule));
      edges(test, true);
    }
    rules.add(new RuleAims(rule, effects(rule, tests)));
  }

  private void outcomes(int within, Test test, Optional<Rule> rule) {
    Condition not = new Condition.Not(test);
    Predicate<Sighting> looked =
        one -> isHere(one) && (rule.isPresent() ? one.worked() : one.ruling().canBe());
    for (Condition outcome : List.of(test, not)) {
      String said = words.test(test) + (outcome == test ? " is met" : " is not met");
      add(
          goal(Criterion.CONDITIONS, rule, said, test.place()),
          whole,
          whole.diagrams().and(within, whole.whereTrue(outcome)),
          one -> looked.test(one) && one.meets(outcome));
    }
  }

  private boolean isHere(Sighting one) {
    return one.symptom().equals(symptom.id());
  }

  private List<Effect> effects(Rule rule, List<Test> tests) {
    return tests.stream()
        .map(
            test ->
                new Effect(
                    goal(Criterion.MC_DC, rule, words.test(test) + " decides", test.place()),
                    whole,
                    Deciding.of(rule.when(), test),
                    tests.stream().filter(other -> other != test).toList()))
        .filter(Effect::isReachable)
        .toList();
  }

  /**
   * The boundaries of a test that no earlier one has. Each has a small space of its own, of what
   * comes before the rules: together they would make a large one.
   */
  private void edges(Test test, boolean worked) {
    if (test.pattern() instanceof InInterval) {
      add(fresh(edges.ofStretch(test)), worked);
    } else if (test.pattern() instanceof AgainstLimits) {
      edges.ofLimits(test.subject()).forEach(row -> add(fresh(row), worked));
    }
  }

  private List<Edge> fresh(List<Edge> some) {
    return some.stream().filter(edge -> (edge.general() ? limits : seen).add(edge.key())).toList();
  }

  private void add(List<Edge> some, boolean worked) {
    if (!some.isEmpty()) {
      AimSpace space =
          AimSpace.before(kb, symptom, some.stream().map(Edge::where).toList(), deadline);
      int within = worked ? space.workable() : space.possible();
      some.forEach(edge -> add(space, within, edge, worked));
    }
  }

  private void add(AimSpace space, int within, Edge edge, boolean worked) {
    int where = space.diagrams().and(within, space.whereTrue(edge.where()));
    Predicate<Sighting> looked =
        one -> (edge.general() || isHere(one)) && (worked ? one.worked() : one.ruling().canBe());
    add(edge.goal(), space, where, one -> looked.test(one) && edge.shows().test(one));
  }

  private void add(Goal goal, AimSpace space, int where, Predicate<Sighting> shows) {
    if (where != Diagrams.NONE) {
      situations.add(SituationAim.of(goal, space, where, shows));
    }
  }

  private Goal goal(Criterion criterion, Rule rule, String words, Place place) {
    return goal(criterion, Optional.of(rule), words, place);
  }

  private Goal goal(Criterion criterion, Optional<Rule> rule, String words, Place place) {
    return new Goal(criterion, symptom.id(), rule.map(Rule::id), words, place);
  }

  /** A fault is shown by every case in which it is concluded. */
  private List<Aim> faults() {
    SortedMap<Answer, List<SituationAim>> firing = new TreeMap<>();
    for (SituationAim aim : situations) {
      if (aim.goal().criterion() == Criterion.RULES) {
        answers(aim)
            .filter(Answer.OfFault.class::isInstance)
            .forEach(answer -> firing.computeIfAbsent(answer, key -> new ArrayList<>()).add(aim));
      }
    }
    List<Aim> aims = new ArrayList<>();
    firing.forEach((answer, rules) -> aims.add(new FaultAim(faultGoal(answer), rules)));
    return aims;
  }

  private Stream<Answer> answers(SituationAim aim) {
    return symptom.rules().get(aim.goal().rule().orElseThrow()).conclusion().answers().stream();
  }

  private Goal faultGoal(Answer answer) {
    return goal(
        Criterion.FAULTS,
        Optional.empty(),
        "fault `" + answer.name() + "` is concluded",
        kb.faults().get(answer.name()).place());
  }
}
