package io.faultwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The demo handbook is clean; every mistake made in it on purpose is found, and Drools agrees. */
class BrokenOnPurposeTest {
  private static final KnowledgeBase FREEZERS =
      Resolver.resolve(FolderReader.read(Path.of("..", "rules", "walk-in-freezers")));
  private static final DerivedValues DERIVED = new DerivedValues(FREEZERS);

  @Test
  void theDemoHasNoGapAndNoContradiction() {
    for (Symptom symptom : FREEZERS.symptoms().values()) {
      SymptomSpace space = SymptomSpace.of(FREEZERS, symptom);
      assertEquals(List.of(), GapAnalysis.findings(space), symptom.id());
      assertEquals(List.of(), ContradictionAnalysis.findings(space), symptom.id());
    }
  }

  @Test
  void withoutARuleThatAloneAnswersSomethingThereIsAGapThatDroolsConfirms() {
    int answering = 0;
    int opened = 0;
    for (Symptom symptom : FREEZERS.symptoms().values()) {
      for (Rule rule : symptom.rules().values()) {
        answering += rule.conclusion().answers().isEmpty() ? 0 : 1;
        opened +=
            confirmed(with(symptom, rules(symptom, rule, Optional.empty()))).isEmpty() ? 0 : 1;
      }
    }
    assertTrue(opened >= answering - 2, opened + " of " + answering + " deletions open a gap");
  }

  @Test
  void aThresholdThatNoRuleCoversAnyMoreIsFoundAtExactlyThatValue() {
    int exact = 0;
    int all = 0;
    for (Symptom symptom : FREEZERS.symptoms().values()) {
      for (Rule rule : symptom.rules().values()) {
        for (Condition.Test test : thresholds(rule)) {
          List<Finding> gaps = confirmed(with(symptom, sharpened(symptom, rule, test)));
          all++;
          exact += gaps.stream().anyMatch(gap -> liesOn(gap, test)) ? 1 : 0;
        }
      }
    }
    assertTrue(all >= 20, "thresholds in the demo: " + all);
    assertTrue(exact * 10 >= all * 9, exact + " of " + all + " gaps lie on the very value");
  }

  /** Gaps of a changed symptom, each witness answered by nothing. */
  private static List<Finding> confirmed(Symptom changed) {
    KnowledgeBase base = with(changed);
    List<Finding> gaps = GapAnalysis.findings(SymptomSpace.of(base, changed));
    if (!gaps.isEmpty()) {
      Runner runner = new Runner(base, RuleCompiler.compile(base));
      for (Finding gap : gaps) {
        assertTrue(
            runner.run(changed.id(), gap.witness().orElseThrow()).answers().isEmpty(),
            () -> changed.id() + ": " + gap);
      }
    }
    return gaps;
  }

  private static List<Condition.Test> thresholds(Rule rule) {
    return rule.when().tests().filter(test -> threshold(test).isPresent()).toList();
  }

  /** The value of an {@code at least} or {@code at most}. */
  private static Optional<BigFraction> threshold(Condition.Test test) {
    if (!(test.pattern() instanceof InInterval in)) {
      return Optional.empty();
    }
    Interval interval = in.interval();
    boolean oneEnd = interval.low().isPresent() != interval.high().isPresent();
    return interval
        .low()
        .or(interval::high)
        .filter(end -> oneEnd && end.included())
        .map(Interval.End::value);
  }

  /** The same condition without its threshold: above for at least, below for at most. */
  private static InInterval sharper(Condition.Test test) {
    Interval interval = ((InInterval) test.pattern()).interval();
    BigFraction value = threshold(test).orElseThrow();
    return new InInterval(
        interval.low().isPresent() ? Interval.above(value) : Interval.below(value));
  }

  private static boolean liesOn(Finding gap, Condition.Test test) {
    Value value = DERIVED.complete(gap.witness().orElseThrow()).readings().get(test.subject());
    return value instanceof Value.Number number
        && number.amount().equals(threshold(test).orElseThrow());
  }

  /** The rules with one threshold made strict. */
  private static SortedMap<String, Rule> sharpened(
      Symptom symptom, Rule rule, Condition.Test test) {
    Condition sharper = new Condition.Test(test.subject(), sharper(test), test.place());
    Rule changed =
        new Rule(
            rule.id(),
            rule.place(),
            replaced(rule.when(), test, sharper),
            rule.conclusion(),
            rule.because(),
            rule.insteadOf());
    return rules(symptom, rule, Optional.of(changed));
  }

  private static Condition replaced(Condition condition, Condition.Test old, Condition with) {
    return condition.match(
        all -> new Condition.All(replaced(all.parts(), old, with)),
        any -> new Condition.Any(replaced(any.parts(), old, with)),
        not -> new Condition.Not(replaced(not.part(), old, with)),
        test -> test.equals(old) ? with : test);
  }

  private static List<Condition> replaced(
      List<Condition> parts, Condition.Test old, Condition with) {
    List<Condition> results = new ArrayList<>();
    parts.forEach(part -> results.add(replaced(part, old, with)));
    return results;
  }

  /** The rules of a symptom without one of them, or with another in its place. */
  private static SortedMap<String, Rule> rules(
      Symptom symptom, Rule old, Optional<Rule> replacement) {
    SortedMap<String, Rule> rules = new TreeMap<>();
    Stream.concat(
            symptom.rules().values().stream().filter(rule -> rule != old), replacement.stream())
        .forEach(rule -> rules.put(rule.id(), rule));
    return rules;
  }

  private static Symptom with(Symptom symptom, SortedMap<String, Rule> rules) {
    return new Symptom(
        symptom.id(),
        symptom.place(),
        symptom.title(),
        symptom.about(),
        symptom.applies(),
        symptom.recognise(),
        symptom.first(),
        rules,
        symptom.nevers(),
        symptom.together(),
        symptom.guide(),
        symptom.hazards());
  }

  private static KnowledgeBase with(Symptom changed) {
    SortedMap<String, Symptom> only = new TreeMap<>();
    only.put(changed.id(), changed);
    return new KnowledgeBase(
        FREEZERS.handbook(),
        FREEZERS.equipment(),
        FREEZERS.readings(),
        FREEZERS.limits(),
        FREEZERS.faults(),
        only,
        FREEZERS.nevers(),
        new TreeMap<>(),
        FREEZERS.cautions(),
        FREEZERS.parts(),
        FREEZERS.guides(),
        FREEZERS.setUps(),
        FREEZERS.charts(),
        FREEZERS.sequences(),
        FREEZERS.wordbook());
  }
}
