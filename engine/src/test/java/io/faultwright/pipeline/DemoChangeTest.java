package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.SymptomChange;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * One limit, one rule and one software bound of the demo handbook are changed. The regions are
 * exactly what follows, and Drools sees a difference in them and nowhere else.
 */
class DemoChangeTest {
  private static final int POINTS = 6_000;

  private static Compared compared;

  @BeforeAll
  static void change() {
    compared =
        Pair.ofDemo()
            .edit(
                "limits.yaml", "{ family: fell, low: 0.25, high", "{ family: fell, low: 0.28, high")
            .edit("symptoms/compressor-short-cycles.yaml", "below 2 K", "below 3 K")
            .edit("symptoms/compressor-short-cycles.yaml", "at least 2 K", "at least 3 K")
            .edit("limits.yaml", "software: below 2.10, low: 60", "software: below 2.9, low: 60")
            .edit("limits.yaml", "software: 2.10, low: 90", "software: 2.9 to 2.10, low: 90")
            .compared();
  }

  @Test
  void exactlyTheseSymptomsChanged() {
    assertEquals(
        List.of("compressor-short-cycles", "drain-frozen", "false-stop"),
        compared.comparison().symptoms().stream()
            .filter(symptom -> !symptom.unchanged())
            .map(SymptomChange::id)
            .toList());
  }

  @Test
  void theRuleChangedWhereItsThresholdMoved() {
    assertEquals(
        List.of(
            "room-sensor-misplaced -> differential-narrow:"
                + " stop-cause: controller; restart-delay: within limits;"
                + " starts-per-hour: above limits;"
                + " room-differential: at least 2 K and below 3 K"),
        words("compressor-short-cycles"));
    againstDrools(
        "compressor-short-cycles",
        point ->
            point.is("stop-cause", "controller")
                && point.above("starts-per-hour")
                && !point.below("restart-delay")
                && point.from("room-differential", "2", "3"));
  }

  @Test
  void theBoundChangedForOneSoftware() {
    assertEquals(
        List.of(
            "low-suction-pressure -> lp-delay-short: software: 2.9; alarm-shown: low-pressure;"
                + " low-pressure-delay: at least 60 s and below 90 s; liquid-valve-open: yes"),
        words("false-stop"));
    againstDrools(
        "false-stop",
        point ->
            point.build().software().filter(v -> v.text().equals("2.9")).isPresent()
                && point.is("alarm-shown", "low-pressure")
                && point.is("liquid-valve-open", "yes")
                && point.from("low-pressure-delay", "60", "90"));
  }

  @Test
  void theLimitChangedForOneFamily() {
    SymptomChange drain = change("drain-frozen");
    assertTrue(
        drain.regions().stream()
            .allMatch(region -> region.equipment().contains(new RegionTest("family", "fell"))));
    againstDrools(
        "drain-frozen",
        point ->
            point.build().model().family().equals("fell")
                && point.is("drain-heater-voltage", "present")
                && point.from("drain-heater-current", "0.25", "0.28"));
  }

  private static SymptomChange change(String symptom) {
    return compared.comparison().symptoms().stream()
        .filter(change -> change.id().equals(symptom))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> words(String symptom) {
    return change(symptom).regions().stream().map(DemoChangeTest::words).toList();
  }

  private static String words(ChangedRegion region) {
    return names(region.before())
        + " -> "
        + names(region.after())
        + ": "
        + String.join(
            "; ",
            Stream.concat(region.equipment().stream(), region.readings().stream())
                .map(test -> test.reading() + ": " + test.accepts())
                .toList());
  }

  private static String names(io.faultwright.change.Outcome outcome) {
    return String.join(" ", outcome.answers().stream().map(answer -> answer.name()).toList());
  }

  /** Whether a situation that belongs to the symptom is expected to have another outcome. */
  private interface Expected {
    boolean changed(Point point);
  }

  private static void againstDrools(String symptom, Expected expected) {
    Runner before = new Runner(compared.before(), RuleCompiler.compile(compared.before()));
    Runner after = new Runner(compared.after(), RuleCompiler.compile(compared.after()));
    Points points = new Points(compared.before(), compared.after(), symptom);
    int changed = 0;
    for (int i = 0; i < POINTS; i++) {
      Point point = points.next();
      Verdict old = before.verdict(symptom, point.situation());
      Verdict current = after.verdict(symptom, point.situation());
      if (old.status().compareTo(io.faultwright.run.Status.NOT_THIS_SYMPTOM) > 0) {
        boolean differ = !old.equals(current);
        assertEquals(expected.changed(point), differ, () -> point + " " + old + " " + current);
        changed += differ ? 1 : 0;
      }
    }
    assertTrue(changed > 5, "situations that changed: " + changed);
  }

  /** A situation with its build, and its limits in the old revision. */
  private record Point(KnowledgeBase kb, Build build, Situation situation) {
    boolean is(String reading, String value) {
      return new Value.Word(value).equals(situation.readings().get(reading));
    }

    boolean from(String reading, String low, String high) {
      BigFraction value = amount(reading);
      return value.compareTo(io.faultwright.quantity.Decimals.parse(low)) >= 0
          && value.compareTo(io.faultwright.quantity.Decimals.parse(high)) < 0;
    }

    boolean above(String reading) {
      return side(reading) == Condition.Side.ABOVE;
    }

    boolean below(String reading) {
      return side(reading) == Condition.Side.BELOW;
    }

    private Condition.Side side(String reading) {
      LimitsTable table = kb.limits().get(reading);
      List<BigFraction> drivers = table.drivers().stream().map(this::amount).toList();
      return Limits.of(table, build).at(drivers).orElseThrow().side(amount(reading));
    }

    private BigFraction amount(String reading) {
      return ((Value.Number) situation.readings().get(reading)).amount();
    }
  }

  /** Random situations whose quantities sit on or beside the figures of either revision. */
  private static final class Points {
    private final Random random = new Random(7);
    private final KnowledgeBase before;
    private final KnowledgeBase after;
    private final SortedSet<String> readings = new TreeSet<>();
    private final List<Condition> conditions = new ArrayList<>();

    Points(KnowledgeBase before, KnowledgeBase after, String symptom) {
      this.before = before;
      this.after = after;
      for (KnowledgeBase kb : List.of(before, after)) {
        Symptom one = kb.symptoms().get(symptom);
        conditions.add(one.recognise());
        one.first().forEach(first -> conditions.add(first.when()));
        one.rules().values().forEach(rule -> conditions.add(rule.when()));
      }
      conditions.stream()
          .flatMap(Condition::tests)
          .map(Condition.Test::subject)
          .filter(before.readings()::containsKey)
          .forEach(readings::add);
      List.copyOf(readings).stream()
          .filter(before.limits()::containsKey)
          .forEach(reading -> readings.addAll(before.limits().get(reading).drivers()));
    }

    Point next() {
      List<Build> builds = before.equipment().builds();
      Build build = builds.get(random.nextInt(builds.size()));
      SortedMap<String, String> equipment = new TreeMap<>();
      equipment.put(Equipment.MODEL, build.model().id());
      build.software().ifPresent(v -> equipment.put(Equipment.SOFTWARE, v.text()));
      SortedMap<String, Value> values = new TreeMap<>();
      readings.stream()
          .map(before.readings()::get)
          .filter(reading -> build.satisfies(reading.applies()))
          .forEach(reading -> values.put(reading.id(), value(reading)));
      return new Point(before, build, new Situation(equipment, values));
    }

    private Value value(Reading reading) {
      return reading
          .domain()
          .match(
              measured -> new Value.Number(pick(marks(reading.id(), measured))),
              choice -> new Value.Word(pick(words(reading.id(), choice.ids()))));
    }

    /** The words with which the symptom is recognised, where it is by this reading. */
    private List<String> words(String reading, List<String> all) {
      List<String> shown =
          conditions
              .get(0)
              .tests()
              .filter(test -> test.subject().equals(reading))
              .flatMap(test -> ((Condition.OneOf) test.pattern()).values().stream())
              .toList();
      return shown.isEmpty() ? all : shown;
    }

    private <T> T pick(List<T> values) {
      return values.get(random.nextInt(values.size()));
    }

    private List<BigFraction> marks(String reading, Domain.Measured domain) {
      TreeSet<BigFraction> marks = new TreeSet<>();
      conditions.stream()
          .flatMap(Condition::tests)
          .filter(test -> test.subject().equals(reading))
          .filter(test -> test.pattern() instanceof InInterval)
          .map(test -> ((InInterval) test.pattern()).interval())
          .flatMap(interval -> Stream.of(interval.low(), interval.high()))
          .flatMap(Optional::stream)
          .forEach(end -> marks.add(end.value()));
      for (KnowledgeBase kb : List.of(before, after)) {
        Optional.ofNullable(kb.limits().get(reading)).stream()
            .flatMap(table -> table.rows().stream())
            .flatMap(row -> Stream.of(row.low(), row.high()))
            .flatMap(Optional::stream)
            .forEach(marks::add);
      }
      BigFraction low = domain.range().low().orElseThrow().value();
      BigFraction high = domain.range().high().orElseThrow().value();
      marks.addAll(List.of(low, high));
      List<BigFraction> all = new ArrayList<>(marks);
      for (BigFraction mark : marks) {
        Optional.ofNullable(marks.higher(mark))
            .ifPresent(next -> all.add(mark.add(next).divide(2)));
      }
      all.removeIf(value -> !domain.range().contains(value));
      return all;
    }
  }
}
