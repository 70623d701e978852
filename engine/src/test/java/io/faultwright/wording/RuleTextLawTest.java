package io.faultwright.wording;

import static io.faultwright.model.Conditions.NOWHERE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Units;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Law: whatever is said as text of the rule language is read back as what it was. */
class RuleTextLawTest {
  private static final String BASE =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn }, scar: { title: Scar } }
        models:
          FL-1: { title: A, family: fell, options: {}, software: [1.4, 2.9, 2.10] }
          TN-1: { title: B, family: tarn, options: {}, software: [2.10, 3.0, 3.2] }
          SC-1: { title: C, family: scar, options: {} }
      readings:
        ice: { ask: "How?", values: [untouched, loose, partly, thin, none] }
        fan: { ask: "Does it?", values: yes/no }
        room: { ask: "How warm?", unit: °C, range: -60 to 120 }
      limits:
        room: { by: [], rows: [{ low: -20, high: -16 }] }
      faults:
        broken: { title: Broken, remedy: [Mend it.], verify: [Look.] }
      symptoms:
        warm:
          title: Warm
          rules:
      """;

  private static final List<String> NAMED = List.of("ice", "fan", "family", "software", "model");

  private final KnowledgeBase kb = resolve(rule(0, "ice: loose"));
  private final RuleText ruleText = new RuleText(kb);
  private final Random random = new Random(20260302);

  @org.junit.jupiter.api.Test
  void patternsAreReadBackAsTheyWere() {
    List<Test> tests = new ArrayList<>();
    StringBuilder rules = new StringBuilder();
    for (int i = 0; i < 1000; i++) {
      Test test = anyTest();
      rules.append(
          rule(i, test.subject() + ": " + ruleText.pattern(test.subject(), test.pattern())));
      tests.add(test);
    }
    KnowledgeBase read = resolve(rules.toString());
    for (int i = 0; i < tests.size(); i++) {
      Condition when = read.symptoms().get("warm").rules().get("r" + i).when();
      String text = ruleText.pattern(tests.get(i).subject(), tests.get(i).pattern());
      assertEquals(meaning(tests.get(i)), meaning(when), text);
    }
  }

  @org.junit.jupiter.api.Test
  void halfOpenIntervalsAreReadBackFromTwoPatterns() {
    List<Interval> intervals = new ArrayList<>();
    StringBuilder rules = new StringBuilder();
    for (int i = 0; i < 300; i++) {
      Interval interval = halfOpen();
      List<String> patterns = ruleText.patterns("room", interval);
      rules.append(
          rule(i, "all: [{ room: %s }, { room: %s }]".formatted(patterns.get(0), patterns.get(1))));
      intervals.add(interval);
    }
    KnowledgeBase read = resolve(rules.toString());
    for (int i = 0; i < intervals.size(); i++) {
      List<Interval> ends =
          intervals(read.symptoms().get("warm").rules().get("r" + i).when()).toList();
      assertEquals(intervals.get(i).low(), ends.get(0).low());
      assertEquals(intervals.get(i).high(), ends.get(1).high());
    }
  }

  @org.junit.jupiter.api.Test
  void valuesAreReadBackAsTheyWere() {
    List<Value> values = new ArrayList<>();
    StringBuilder cases = new StringBuilder("cases:\n");
    for (int i = 0; i < 300; i++) {
      Value value = i % 10 == 0 ? new Value.NotTaken() : new Value.Number(amount());
      String given = "{ room: " + ruleText.value("room", value) + " }";
      cases.append("  c" + i + ": { symptom: warm, given: " + given + ", expect: nothing yet }\n");
      values.add(value);
    }
    KnowledgeBase read = resolve(rule(0, "ice: loose") + cases);
    for (int i = 0; i < values.size(); i++) {
      assertEquals(values.get(i), read.cases().get("c" + i).given().readings().get("room"));
    }
  }

  /** A test by what it accepts, whether it is written plainly or with a {@code not}. */
  private Set<Object> meaning(Condition condition) {
    if (condition instanceof Condition.All all) {
      return meaning(all.parts().get(0));
    }
    if (condition instanceof Condition.Not not) {
      Set<Object> rest = new TreeSet<>(whole((Test) not.part()));
      rest.removeAll(meaning(not.part()));
      return rest;
    }
    return ((Test) condition)
        .pattern()
        .match(
            oneOf -> new TreeSet<Object>(oneOf.values()),
            interval -> Set.<Object>of(interval),
            limits -> new TreeSet<Object>(limits.sides()),
            notTaken -> Set.<Object>of(notTaken));
  }

  private Set<Object> whole(Test test) {
    return test.pattern() instanceof OneOf
        ? new TreeSet<Object>(values(test.subject()))
        : new TreeSet<Object>(EnumSet.allOf(Side.class));
  }

  private Test anyTest() {
    String named = NAMED.get(random.nextInt(NAMED.size()));
    return switch (random.nextInt(5)) {
      case 0, 1 -> new Test("room", new InInterval(interval()), NOWHERE);
      case 2 -> new Test("room", someSides(), NOWHERE);
      case 3 -> random.nextBoolean() ? new Test("ice", new CannotBeTaken(), NOWHERE) : some(named);
      default -> some(named);
    };
  }

  /** Some of the values, neither none nor all. */
  private Test some(String subject) {
    List<String> values = values(subject);
    TreeSet<String> chosen = new TreeSet<>(values);
    while (chosen.isEmpty() || chosen.size() == values.size()) {
      chosen.clear();
      values.stream().filter(value -> random.nextBoolean()).forEach(chosen::add);
    }
    return new Test(subject, new OneOf(chosen), NOWHERE);
  }

  private List<String> values(String subject) {
    return new Subjects(kb).values(subject);
  }

  private Pattern someSides() {
    List<Side> sides = new ArrayList<>(Arrays.asList(Side.values()));
    sides.remove(random.nextInt(3));
    if (random.nextBoolean()) {
      sides.remove(random.nextInt(2));
    }
    return new AgainstLimits(EnumSet.copyOf(sides));
  }

  private Interval interval() {
    BigFraction value = amount();
    return switch (random.nextInt(6)) {
      case 0 -> Interval.above(value);
      case 1 -> Interval.atLeast(value);
      case 2 -> Interval.below(value);
      case 3 -> Interval.atMost(value);
      case 4 -> Interval.point(value);
      default -> Interval.closed(value, value.add(random.nextInt(10) + 1));
    };
  }

  private Interval halfOpen() {
    BigFraction low = amount();
    boolean lowIn = random.nextBoolean();
    return new Interval(Optional.of(new End(low, lowIn)), Optional.of(new End(low.add(3), !lowIn)));
  }

  /** Within the range; every third has no finite decimal in its own unit. */
  private BigFraction amount() {
    BigFraction tenths = BigFraction.of(random.nextInt(1500) - 500, 10);
    return random.nextInt(3) == 0
        ? Units.find("°F").orElseThrow().convert(tenths, Units.find("°C").orElseThrow())
        : tenths;
  }

  private static Stream<Interval> intervals(Condition condition) {
    return condition.match(
        all -> all.parts().stream().flatMap(RuleTextLawTest::intervals),
        any -> any.parts().stream().flatMap(RuleTextLawTest::intervals),
        not -> intervals(not.part()),
        test -> Stream.of(((InInterval) test.pattern()).interval()));
  }

  private static String rule(int number, String when) {
    return "      r%d: { when: { %s }, conclude: broken, because: It is. }\n"
        .formatted(number, when);
  }

  private static KnowledgeBase resolve(String rest) {
    return Resolver.resolve(new Sources(List.of(new SourceFile("handbook.yaml", BASE + rest))));
  }
}
