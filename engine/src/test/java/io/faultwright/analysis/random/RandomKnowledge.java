package io.faultwright.analysis.random;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;

import io.faultwright.model.Access;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Conditions;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.NamedValue;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Small random knowledge bases with everything that bears on gaps and contradictions. Every number
 * is a whole number from {@link #BOTTOM} to {@link #TOP}, so that a brute-force search knows where
 * to look.
 */
public final class RandomKnowledge {
  public static final int BOTTOM = -1;
  public static final int TOP = 2;

  /** Steps from the lowest to the highest number. */
  private static final int SPAN = TOP - BOTTOM;

  public static final String SYMPTOM = "complaint";
  static final String DIFFERENCE = "difference";

  private final Random random;
  private final KnowledgeBaseBuilder base = new KnowledgeBaseBuilder();
  private final List<String> words = new ArrayList<>();
  private final List<String> amounts = new ArrayList<>();
  private final List<String> limited = new ArrayList<>();
  private final boolean refusals;

  private RandomKnowledge(Random random) {
    this.random = random;
    refusals = random.nextInt(4) == 0;
  }

  /** The knowledge base of a seed, always the same. */
  public static KnowledgeBase of(long seed) {
    return new RandomKnowledge(new Random(seed)).build();
  }

  /** A knowledge base that begins like that of a seed and goes another way after some choices. */
  public static KnowledgeBase of(long seed, int choices, long then) {
    return new RandomKnowledge(new Turning(seed, choices, then)).build();
  }

  /** Random numbers of one seed, then of another. */
  private static final class Turning extends Random {
    private static final long serialVersionUID = 1L;

    private final Random later;
    private int left;

    Turning(long seed, int choices, long then) {
      super(seed);
      later = new Random(then);
      left = choices;
    }

    @Override
    public int nextInt(int bound) {
      return left-- > 0 ? super.nextInt(bound) : later.nextInt(bound);
    }

    @Override
    public boolean nextBoolean() {
      return nextInt(2) == 1;
    }
  }

  private KnowledgeBase build() {
    equipment();
    readings();
    base.symptom(SymptomBuilder.symptom("elsewhere"));
    base.symptom(symptom());
    if (random.nextInt(4) == 0) {
      base.never("general", condition(1));
    }
    return base.build();
  }

  private void equipment() {
    base.option("defrost", "gas", "electric");
    base.model("A-1", "alpha", Map.of("defrost", "gas"), "2.9", "2.10");
    if (random.nextBoolean()) {
      base.model("A-2", "alpha", Map.of("defrost", "electric"), "2.10");
    }
    if (random.nextBoolean()) {
      base.model("B-1", "beta", Map.of("defrost", "gas"));
    }
  }

  private void readings() {
    for (int i = random.nextInt(2); i >= 0; i--) {
      words.add("word-" + i);
      base.reading("word-" + i, choice(2 + random.nextInt(2)), Access.OUTSIDE, 1, applies());
    }
    switch (random.nextInt(5)) {
      case 0 -> free();
      case 4 -> difference();
      case 1 -> follower("follower", 1 + random.nextInt(2));
      case 2 -> {
        follower("follower", 1);
        free();
      }
      default -> {
        follower("follower", 1);
        follower("second", 1);
      }
    }
  }

  private Condition applies() {
    return random.nextInt(8) == 0 ? is("defrost", "gas") : Condition.ALWAYS;
  }

  private static Domain choice(int values) {
    List<NamedValue> named = new ArrayList<>();
    for (int i = 0; i < values; i++) {
      named.add(new NamedValue("v" + i, "v" + i));
    }
    return new Domain.Choice(named, false);
  }

  private void free() {
    measured("free");
  }

  /** Two readings and how far they are apart; at times with fixed limits of that. */
  private void difference() {
    measured("left");
    measured("right");
    base.applies("left", applies());
    base.difference(DIFFERENCE, "left", "right");
    amounts.add(DIFFERENCE);
    if (random.nextBoolean()) {
      limited.add(DIFFERENCE);
      LimitsTableBuilder fixed = LimitsTableBuilder.fixed(DIFFERENCE, "family");
      rows(builds -> fixedRow(fixed, builds));
      base.limits(fixed.build());
    }
  }

  private void measured(String id) {
    Interval range = Interval.closed(BigFraction.of(BOTTOM), BigFraction.of(TOP));
    base.reading(id, new Domain.Measured(Units.find("K").orElseThrow(), range, Optional.empty()));
    amounts.add(id);
  }

  private void follower(String id, int tables) {
    measured(id);
    limited.add(id);
    if (random.nextInt(5) == 0) {
      LimitsTableBuilder fixed = LimitsTableBuilder.fixed(id, "family");
      rows(builds -> fixedRow(fixed, builds));
      base.limits(fixed.build());
      return;
    }
    if (!amounts.contains("driver")) {
      measured("driver");
    }
    boolean step = random.nextInt(3) == 0;
    LimitsTableBuilder table =
        step
            ? LimitsTableBuilder.stepped(id, "driver", "family")
            : LimitsTableBuilder.interpolated(id, "driver", "family");
    rows(builds -> drivenRows(table, builds, step));
    base.limits(table.build());
  }

  private interface Rows {
    void add(Condition builds);
  }

  private void rows(Rows rows) {
    if (random.nextBoolean()) {
      rows.add(Condition.ALWAYS);
      return;
    }
    rows.add(is("family", "alpha"));
    if (random.nextInt(3) > 0) {
      rows.add(not(is("family", "alpha")));
    }
  }

  private void fixedRow(LimitsTableBuilder table, Condition builds) {
    int low = BOTTOM + random.nextInt(SPAN);
    table.row(builds, "" + low, "" + (low + random.nextInt(TOP - low + 1)));
  }

  private void drivenRows(LimitsTableBuilder table, Condition builds, boolean step) {
    int shortened = random.nextInt(6);
    int from = shortened == 0 ? BOTTOM + 1 : BOTTOM;
    int last = shortened == 1 ? TOP - 1 : TOP;
    int middle = from + 1 + random.nextInt(last - from - 1);
    boolean openLow = random.nextInt(6) == 0;
    int[] points = {from, middle, last};
    for (int i = 0; i < (step ? 2 : 3); i++) {
      int low = BOTTOM + random.nextInt(SPAN + 1);
      String lowText = openLow ? "-" : "" + low;
      String highText = "" + (low + random.nextInt(TOP - low + 1));
      if (step) {
        table.over(builds, "" + points[i], "" + points[i + 1], lowText, highText);
      } else {
        table.at(builds, "" + points[i], lowText, highText);
      }
    }
  }

  private SymptomBuilder symptom() {
    SymptomBuilder symptom = SymptomBuilder.symptom(SYMPTOM);
    if (random.nextInt(5) == 0) {
      symptom.applies(is("family", "alpha"));
    }
    if (random.nextInt(4) == 0) {
      symptom.recognise(word());
    }
    if (random.nextInt(3) == 0) {
      symptom.first(condition(1), "elsewhere");
    }
    if (random.nextInt(3) == 0) {
      symptom.never("own", condition(1));
    }
    if (random.nextInt(3) == 0) {
      symptom.together("f0", "f1");
    }
    int rules = 2 + random.nextInt(5);
    for (int i = 0; i < rules; i++) {
      symptom.rule("r" + i, condition(2), conclusion(), silenced(i));
    }
    return symptom;
  }

  private String[] silenced(int rule) {
    return rule > 0 && random.nextInt(3) == 0
        ? new String[] {"r" + random.nextInt(rule)}
        : new String[0];
  }

  private Conclusion conclusion() {
    return switch (random.nextInt(8)) {
      case 0 -> SymptomBuilder.exclude("f" + random.nextInt(3));
      case 1 -> new Conclusion.Refer("elsewhere");
      case 2 -> new Conclusion.Escalate("hotline");
      default -> SymptomBuilder.conclude("f" + random.nextInt(3));
    };
  }

  private Condition condition(int depth) {
    int parts = 1 + random.nextInt(2);
    List<Condition> conditions = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      conditions.add(depth > 0 && random.nextInt(3) == 0 ? nested(depth - 1) : test());
    }
    return new Condition.All(conditions);
  }

  private Condition nested(int depth) {
    return switch (random.nextInt(3)) {
      case 0 -> not(condition(depth));
      case 1 -> new Condition.Any(List.of(condition(depth), condition(depth)));
      default -> new Condition.Any(List.of(test(), test(), condition(depth)));
    };
  }

  private Condition test() {
    return switch (random.nextInt(9)) {
      case 0, 1 -> word();
      case 2 -> equipment(random.nextInt(3));
      case 3 -> refusals ? notTaken(observed()) : amount();
      case 4, 5 -> amount();
      default -> limited.isEmpty() ? word() : side();
    };
  }

  private String observed() {
    return any(amounts.stream().filter(id -> !id.equals(DIFFERENCE)).toList());
  }

  private Condition word() {
    String reading = any(words);
    String value = "v" + random.nextInt(2);
    return random.nextInt(4) == 0 ? not(is(reading, value)) : is(reading, value);
  }

  private static Condition equipment(int kind) {
    return switch (kind) {
      case 0 -> is("family", "alpha");
      case 1 -> is("software", "2.10");
      default -> is("defrost", "gas");
    };
  }

  private Condition amount() {
    String reading = any(amounts);
    BigFraction value = BigFraction.of(BOTTOM + random.nextInt(SPAN + 1));
    Interval interval =
        switch (random.nextInt(5)) {
          case 0 -> Interval.above(value);
          case 1 -> Interval.atLeast(value);
          case 2 -> Interval.below(value);
          case 3 -> Interval.atMost(value);
          default -> Interval.closed(value, BigFraction.of(TOP));
        };
    return Conditions.in(reading, interval);
  }

  private Condition side() {
    Side[] sides = Side.values();
    Side first = sides[random.nextInt(3)];
    return random.nextInt(4) == 0
        ? Conditions.limits(any(limited), Side.BELOW, Side.ABOVE)
        : Conditions.limits(any(limited), first);
  }

  private String any(List<String> ids) {
    return ids.get(random.nextInt(ids.size()));
  }
}
