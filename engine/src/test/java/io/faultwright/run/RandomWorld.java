package io.faultwright.run;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.notTaken;
import static io.faultwright.model.LimitsTableBuilder.fixed;
import static io.faultwright.model.LimitsTableBuilder.interpolated;
import static io.faultwright.model.LimitsTableBuilder.stepped;
import static io.faultwright.model.SymptomBuilder.symptom;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import io.faultwright.model.Condition.Not;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Conditions;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Situation;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Random rules over a small fixed world, and random situations in it, from a seed. */
final class RandomWorld {
  static final String SYMPTOM = "anything";
  private static final int DEPTH = 3;
  private static final List<String> CHOICES = List.of("ice", "fan", "valve");
  private static final List<String> VALUES = List.of("a", "b", "c");
  private static final List<String> QUANTITIES = List.of("ambient", "pressure", "coil", "flow");
  private static final Map<String, List<String>> EQUIPMENT =
      Map.of(
          "family", List.of("fell", "tarn"),
          "model", List.of("FL-1", "FL-2", "TN-1"),
          "software", List.of("1.4", "2.9", "2.10"),
          "defrost", List.of("hot-gas", "electric"));

  /** What each model does not have. */
  private static final Map<String, Set<String>> LACKING =
      Map.of("FL-1", Set.of(), "FL-2", Set.of("flow", "ambient"), "TN-1", Set.of("valve"));

  private final Random random;

  RandomWorld(long seed) {
    this.random = new Random(seed);
  }

  /** The world with so many rules of one symptom, each with a fault of its own. */
  KnowledgeBase base(int rules) {
    return base(rules, i -> new String[0]);
  }

  /** The same, some of the rules standing instead of earlier ones. */
  KnowledgeBase layeredBase(int rules) {
    return base(rules, this::someBefore);
  }

  private String[] someBefore(int rule) {
    return rule == 0
        ? new String[0]
        : random.ints(random.nextInt(3), 0, rule).mapToObj(i -> "r" + i).toArray(String[]::new);
  }

  private KnowledgeBase base(int rules, IntFunction<String[]> insteadOf) {
    SymptomBuilder symptom = symptom(SYMPTOM);
    IntStream.range(0, rules)
        .forEach(
            i -> symptom.concludes("r" + i, condition(DEPTH), "fault-" + i, insteadOf.apply(i)));
    return world().symptom(symptom).build();
  }

  /** Not every build has a valve or a flow. */
  private static KnowledgeBaseBuilder world() {
    KnowledgeBaseBuilder base =
        new KnowledgeBaseBuilder()
            .option("defrost", "hot-gas", "electric")
            .model("FL-1", "fell", Map.of("defrost", "hot-gas"), "1.4", "2.9", "2.10")
            .model("FL-2", "fell", Map.of("defrost", "electric"))
            .model("TN-1", "tarn", Map.of("defrost", "hot-gas"), "2.10");
    CHOICES.forEach(choice -> base.choice(choice, VALUES.toArray(String[]::new)));
    QUANTITIES.forEach(quantity -> base.measured(quantity, "K", "-6", "12"));
    base.applies("valve", is("family", "fell")).applies("flow", is("defrost", "hot-gas"));
    base.applies("ambient", is("model", "FL-1", "TN-1"));
    return base.limits(pressure()).limits(coil()).limits(flow());
  }

  private static LimitsTable pressure() {
    return interpolated("pressure", "ambient", "family")
        .at(is("family", "fell"), "-3", "-2", "5")
        .at(is("family", "fell"), "7", "4", "8")
        .at(is("family", "fell"), "10", "-", "11")
        .at(is("family", "tarn"), "4", "3", "6")
        .build();
  }

  private static LimitsTable coil() {
    return stepped("coil", "ambient", "software")
        .over(is("software", "1.4", "2.9"), "-6", "5", "-2", "4")
        .over(is("software", "1.4", "2.9"), "5", "12", "3", "-")
        .over(is("software", "2.10"), "0", "8", "2", "4")
        .build();
  }

  private static LimitsTable flow() {
    return fixed("flow", "defrost")
        .row(is("defrost", "hot-gas"), "-3", "6")
        .row(is("defrost", "electric"), "-5", "-2")
        .build();
  }

  private Condition condition(int depth) {
    return switch (depth == 0 ? 3 : random.nextInt(5)) {
      case 0 -> new All(parts(depth));
      case 1 -> new Any(parts(depth));
      case 2 -> new Not(condition(depth - 1));
      default -> test();
    };
  }

  private List<Condition> parts(int depth) {
    return IntStream.range(0, random.nextInt(4)).mapToObj(i -> condition(depth - 1)).toList();
  }

  private Condition test() {
    return switch (random.nextInt(6)) {
      case 0 -> equipmentTest();
      case 1 -> notTaken(pick(random.nextBoolean() ? CHOICES : QUANTITIES));
      case 2, 3 -> is(pick(CHOICES), some(VALUES));
      case 4 -> Conditions.in(pick(QUANTITIES), interval());
      default -> limits(pick(QUANTITIES.subList(1, 4)), pick(List.of(Side.values())), side());
    };
  }

  private Condition equipmentTest() {
    String fact = pick(EQUIPMENT.keySet().stream().sorted().toList());
    return is(fact, some(EQUIPMENT.get(fact)));
  }

  private Side side() {
    return pick(List.of(Side.values()));
  }

  private Interval interval() {
    BigFraction cut = amount();
    return switch (random.nextInt(5)) {
      case 0 -> Interval.above(cut);
      case 1 -> Interval.atLeast(cut);
      case 2 -> Interval.below(cut);
      case 3 -> Interval.atMost(cut);
      default -> Interval.closed(cut, cut.add(BigFraction.of(random.nextInt(4))));
    };
  }

  /** A situation in which each reading and equipment fact is given, or not, at random. */
  Situation situation() {
    SituationBuilder situation = SituationBuilder.situation();
    EQUIPMENT.get("model").stream()
        .skip(random.nextInt(3))
        .findFirst()
        .filter(model -> random.nextBoolean())
        .ifPresent(model -> situation.equipment("model", model));
    readings().forEach(reading -> given(situation, reading));
    return situation.build();
  }

  private void given(SituationBuilder situation, String reading) {
    if (random.nextInt(3) > 0) {
      situation.value(reading, value(reading));
    }
  }

  static List<String> readings() {
    return Stream.concat(CHOICES.stream(), QUANTITIES.stream()).toList();
  }

  /** The situation with everything it leaves open filled in at random. */
  Situation completed(Situation partial) {
    SituationBuilder situation = SituationBuilder.situation();
    readings().forEach(reading -> situation.value(reading, known(partial, reading)));
    partial.equipment().forEach(situation::equipment);
    if (partial.equipment().isEmpty()) {
      situation.equipment("model", pick(modelsWith(partial.readings().keySet())));
    }
    return situation.build();
  }

  private static List<String> modelsWith(Set<String> readings) {
    return LACKING.entrySet().stream()
        .filter(model -> Collections.disjoint(model.getValue(), readings))
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }

  /** The situation with one more reading given, where one is missing. */
  Situation extended(Situation partial) {
    TreeMap<String, Value> readings = new TreeMap<>(partial.readings());
    readings().stream()
        .filter(reading -> !readings.containsKey(reading))
        .skip(random.nextInt(2))
        .findFirst()
        .ifPresent(reading -> readings.put(reading, value(reading)));
    return new Situation(partial.equipment(), readings);
  }

  private Value known(Situation partial, String reading) {
    Value given = partial.readings().get(reading);
    return given == null ? value(reading) : given;
  }

  private Value value(String reading) {
    if (random.nextInt(8) == 0) {
      return new Value.NotTaken();
    }
    return CHOICES.contains(reading) ? new Value.Word(pick(VALUES)) : new Value.Number(amount());
  }

  /** Halves and thirds, so that values meet cuts and interpolated limits exactly. */
  private BigFraction amount() {
    int parts = 1 + random.nextInt(3);
    return BigFraction.of(random.nextInt(18 * parts + 1) - 6 * parts, parts);
  }

  private String[] some(List<String> values) {
    String[] some = values.stream().filter(v -> random.nextBoolean()).toArray(String[]::new);
    return some.length == 0 ? new String[] {pick(values)} : some;
  }

  private <T> T pick(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }
}
