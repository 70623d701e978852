package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.Mutant;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.judge.Ruling;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The mistakes in one symptom, and what its cases notice of them. */
final class SymptomMutants {
  private final Judge judge;
  private final KnowledgeBase kb;
  private final Symptom symptom;
  private final RuleVariants variants;
  private final List<Witnessed> cases;
  private final Deadline deadline;

  /**
   * @param cases those of the symptom
   */
  SymptomMutants(Judge judge, Symptom symptom, List<Witnessed> cases, Deadline deadline) {
    this.judge = judge;
    this.kb = judge.knowledge();
    this.symptom = symptom;
    this.variants = new RuleVariants(kb, symptom);
    this.cases = List.copyOf(cases);
    this.deadline = deadline;
  }

  /** The mistakes in one rule. */
  List<MutantStatus> of(Rule rule) {
    return judged(variants.of(rule), Optional.of(rule), rule.when().tests().toList());
  }

  /** The mistakes in what must be right first. */
  List<MutantStatus> ofFirst() {
    List<Test> tests =
        symptom.first().stream().map(Symptom.First::when).flatMap(Condition::tests).toList();
    return judged(variants.ofFirst(), Optional.empty(), tests);
  }

  private List<MutantStatus> judged(
      List<Variant<Symptom>> some, Optional<Rule> rule, List<Test> tests) {
    List<Optional<Witnessed>> killers = some.stream().map(one -> killer(one, rule)).toList();
    List<Symptom> left = new ArrayList<>();
    for (int i = 0; i < some.size(); i++) {
      if (killers.get(i).isEmpty()) {
        left.add(some.get(i).changed());
      }
    }
    Search search = new Search(left, tests);
    List<MutantStatus> judged = new ArrayList<>();
    for (int i = 0; i < some.size(); i++) {
      Variant<Symptom> one = some.get(i);
      Mutant mutant =
          new Mutant(
              one.operator(),
              Optional.of(symptom.id()),
              rule.map(Rule::id),
              one.words(),
              one.place());
      judged.add(
          killers
              .get(i)
              .map(by -> MutantStatus.killed(mutant, by.recorded().id()))
              .orElseGet(() -> search.status(mutant, one.changed())));
    }
    return judged;
  }

  private Optional<Witnessed> killer(Variant<Symptom> one, Optional<Rule> rule) {
    return cases.stream().filter(each -> differs(each.sighting(), one.changed(), rule)).findFirst();
  }

  /** Whether the changed rules give another answer; most changes leave the rule as it comes out. */
  private boolean differs(Sighting one, Symptom changed, Optional<Rule> rule) {
    if (rule.isPresent() && !mayDiffer(one, rule.get(), changed)) {
      return false;
    }
    return !judge.decide(changed, one.observed()).answers().equals(one.ruling().answers());
  }

  private static boolean mayDiffer(Sighting one, Rule rule, Symptom changed) {
    if (!one.ruling().worked()) {
      return false;
    }
    Rule other = changed.rules().get(rule.id());
    Truth truth = one.observed().met(rule.when());
    return other == null || !other.conclusion().equals(rule.conclusion())
        ? truth != Truth.FALSE
        : truth != one.observed().met(other.when());
  }

  /** Looks for situations that show mistakes: near the cases first, then everywhere. */
  private final class Search {
    private final List<Symptom> left;
    private final List<Test> tests;
    private final List<Sighting> found = new ArrayList<>();
    private Optional<List<Sighting>> near = Optional.empty();
    private Optional<RuleDifference> everywhere = Optional.empty();

    Search(List<Symptom> left, List<Test> tests) {
      this.left = left;
      this.tests = tests;
    }

    MutantStatus status(Mutant mutant, Symptom changed) {
      try {
        Optional<Sighting> shows =
            first(found, changed)
                .or(() -> first(near(), changed))
                .or(() -> everywhere().with(changed).map(one -> few(one, changed)));
        shows.filter(one -> !found.contains(one)).ifPresent(found::add);
        return shows
            .map(one -> MutantStatus.survived(mutant, difference(one, changed)))
            .orElseGet(() -> MutantStatus.equivalent(mutant));
      } catch (OutOfTime late) {
        return MutantStatus.undecided(mutant);
      }
    }

    private Optional<Sighting> first(List<Sighting> some, Symptom changed) {
      return some.stream().filter(one -> differs(one, changed, Optional.empty())).findFirst();
    }

    /** Without the readings that the difference does not need. */
    private Sighting few(Situation whole, Symptom changed) {
      Sighting kept = Sighting.of(judge, symptom, whole);
      for (String reading : whole.readings().keySet()) {
        SortedMap<String, Value> fewer = new TreeMap<>(kept.observed().given().readings());
        fewer.remove(reading);
        Sighting without = Sighting.of(judge, symptom, new Situation(whole.equipment(), fewer));
        if (without.ruling().answers().equals(kept.ruling().answers())
            && differs(without, changed, Optional.empty())) {
          kept = without;
        }
      }
      return kept;
    }

    private List<Sighting> near() {
      if (near.isEmpty()) {
        List<Sighting> own = cases.stream().map(Witnessed::sighting).toList();
        near = Optional.of(new NearCases(judge, symptom).of(own, tests));
      }
      return near.get();
    }

    private RuleDifference everywhere() {
      if (everywhere.isEmpty()) {
        everywhere = Optional.of(new RuleDifference(kb, symptom, left, deadline));
      }
      return everywhere.get();
    }
  }

  private Difference difference(Sighting one, Symptom changed) {
    Ruling wrong = judge.decide(changed, one.observed());
    Situation situation = one.observed().given();
    return new Difference(symptom.id(), situation, one.ruling().answers(), wrong.answers());
  }
}
