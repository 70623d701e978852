package io.faultwright.analysis.quiz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.quiz.Choice.OnSide;
import io.faultwright.quiz.Choice.Outcome;
import io.faultwright.quiz.Choice.Take;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Stem;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Lets Drools judge items over complete situations that agree with what they show. Knows nothing of
 * the diagrams of which they were made: the readings that are not shown are drawn from all values
 * that they can have, those next to limits and thresholds as often as others.
 */
public final class DroolsJudge {
  private static final int SITUATIONS = 24;

  private final KnowledgeBase kb;
  private final Runner runner;
  private final Map<String, Runner> sides = new HashMap<>();

  public DroolsJudge(KnowledgeBase kb) {
    this.kb = kb;
    this.runner = new Runner(kb, RuleCompiler.compile(kb));
  }

  /** Fails where Drools finds that another choice is right, or the right one is not. */
  public void confirm(Item item) {
    if (item.stem() instanceof Stem.WhichFault one) {
      told(item, one.symptom(), one.machine().situation());
    } else if (item.stem() instanceof Stem.FirstFails one) {
      told(item, one.symptom(), one.machine().situation());
    } else if (item.stem() instanceof Stem.AgainstLimits one) {
      side(item, one);
    } else if (item.stem() instanceof Stem.WhatSeparates one) {
      separated(item, one);
    }
  }

  private void told(Item item, String symptom, Situation shown) {
    Set<Answer> right = Set.of(((Outcome) item.choices().get(item.right()).content()).answer());
    assertEquals(right, runner.verdict(symptom, shown).answers(), item::toString);
    for (Situation whole : whole(symptom, shown, item.id().hashCode())) {
      Verdict verdict = runner.verdict(symptom, whole);
      if (isPossible(verdict)) {
        assertEquals(right, verdict.answers(), () -> item + " " + whole);
      }
    }
  }

  /** Whether a situation can be met with the complaint. */
  public static boolean isPossible(Verdict verdict) {
    return switch (verdict.status()) {
      case REFERRED, ANSWERED, NOTHING_YET, NO_ANSWER -> true;
      default -> false;
    };
  }

  /** Two situations with the same value of the right reading never come to different ones. */
  private void separated(Item item, Stem.WhatSeparates stem) {
    Take right = (Take) item.choices().get(item.right()).content();
    Answer one = new Answer.OfFault(stem.faults().one());
    Answer other = new Answer.OfFault(stem.faults().other());
    Random random = new Random(item.id().hashCode());
    for (int round = 0; round < 5; round++) {
      Situation known =
          Ground.with(stem.machine().situation(), right.reading(), drawn(right.reading(), random));
      Situation placed = withDrivers(known, right.reading(), random);
      SortedSet<Answer> told = new TreeSet<>();
      for (Situation whole : whole(stem.symptom(), placed, random.nextInt())) {
        Verdict verdict = runner.verdict(stem.symptom(), whole);
        if (isPossible(verdict)) {
          told.addAll(verdict.answers());
        }
      }
      assertTrue(
          !told.contains(one) || !told.contains(other), () -> item + " " + placed + " " + told);
    }
  }

  /** What the limits of the reading follow is read with it. */
  private Situation withDrivers(Situation known, String reading, Random random) {
    Situation placed = known;
    if (kb.limits().containsKey(reading)) {
      for (String driver : kb.limits().get(reading).drivers()) {
        if (!placed.readings().containsKey(driver)) {
          placed = Ground.with(placed, driver, drawn(driver, random));
        }
      }
    }
    return placed;
  }

  /** Complete situations that agree with what is shown. */
  private List<Situation> whole(String symptom, Situation shown, int seed) {
    Random random = new Random(seed);
    Set<String> readings = readings(kb.symptoms().get(symptom));
    List<Situation> all = new ArrayList<>();
    for (int i = 0; i < SITUATIONS; i++) {
      SortedMap<String, Value> values = new TreeMap<>();
      readings.forEach(id -> values.put(id, drawn(id, random)));
      values.putAll(shown.readings());
      all.add(new Situation(shown.equipment(), values));
    }
    return all;
  }

  /** Everything that the symptom asks for, and what that is computed from or follows. */
  private Set<String> readings(Symptom symptom) {
    Set<String> readings = new TreeSet<>();
    List<Condition> asked = new ArrayList<>();
    asked.add(symptom.recognise());
    symptom.first().forEach(first -> asked.add(first.when()));
    symptom.rules().values().forEach(rule -> asked.add(rule.when()));
    asked.forEach(
        condition -> condition.tests().forEach(test -> collect(test.subject(), readings)));
    return readings;
  }

  private void collect(String subject, Set<String> readings) {
    if (!kb.readings().containsKey(subject)) {
      return;
    }
    SortedSet<String> operands = kb.readings().get(subject).operands();
    if (operands.isEmpty()) {
      readings.add(subject);
    }
    operands.forEach(operand -> collect(operand, readings));
    if (kb.limits().containsKey(subject)) {
      kb.limits().get(subject).drivers().forEach(driver -> collect(driver, readings));
    }
  }

  private Value drawn(String reading, Random random) {
    return kb.readings()
        .get(reading)
        .domain()
        .match(
            measured -> amount(measured, random),
            choice -> new Value.Word(choice.ids().get(random.nextInt(choice.ids().size()))));
  }

  private static Value amount(Domain.Measured measured, Random random) {
    Interval range = measured.range();
    BigFraction low = range.low().orElseThrow().value();
    BigFraction high = range.high().orElseThrow().value();
    BigFraction part = BigFraction.of(random.nextInt(401), 400);
    return new Value.Number(low.add(high.subtract(low).multiply(part)));
  }

  /** A symptom of which every rule says a side of the limits. */
  private void side(Item item, Stem.AgainstLimits stem) {
    Side right = ((OnSide) item.choices().get(item.right()).content()).side();
    Situation shown = stem.machine().situation();
    if (kb.readings().get(stem.reading()).derived().isPresent()) {
      return;
    }
    Verdict verdict =
        sides
            .computeIfAbsent(stem.reading(), this::ofSides)
            .verdict("sides", Ground.with(shown, stem.reading(), stem.value()));
    assertEquals(Set.of(new Answer.OfEscalation(right.name())), verdict.answers(), item::toString);
  }

  private Runner ofSides(String reading) {
    Symptom some = kb.symptoms().values().iterator().next();
    SortedMap<String, Rule> rules = new TreeMap<>();
    for (Side side : Side.values()) {
      Condition when = new Test(reading, new AgainstLimits(EnumSet.of(side)), some.place());
      rules.put(
          side.name(),
          new Rule(
              side.name(),
              some.place(),
              when,
              new Conclusion.Escalate(side.name()),
              "",
              Sorted.set(Set.of())));
    }
    Symptom sides =
        new Symptom(
            "sides",
            some.place(),
            "",
            "",
            Condition.ALWAYS,
            Condition.ALWAYS,
            List.of(),
            rules,
            new TreeMap<>(),
            new TreeSet<>(),
            some.guide(),
            some.hazards());
    KnowledgeBase judged = kb.with(sides);
    return new Runner(judged, RuleCompiler.compile(judged));
  }
}
