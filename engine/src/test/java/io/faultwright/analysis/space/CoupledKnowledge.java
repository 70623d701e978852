package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.in;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;

import io.faultwright.model.Access;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Small random knowledge bases with readings computed from others, and conditions on them.
 *
 * @param knowledge readings {@code a}, {@code b}, {@code c}, what is computed from them, limits
 * @param conditions what is asked
 */
record CoupledKnowledge(KnowledgeBase knowledge, List<Condition> conditions) {
  static final int TOP = 4;

  static CoupledKnowledge of(long seed) {
    return new Maker(new Random(seed)).make();
  }

  Space space() {
    return Space.of(knowledge, knowledge.equipment().builds(), conditions, List.of());
  }

  private static final class Maker {
    private static final Unit UNIT = Units.find("K").orElseThrow();

    private final Random random;
    private final KnowledgeBaseBuilder base = new KnowledgeBaseBuilder();
    private final List<String> observed = new ArrayList<>();
    private final List<String> all = new ArrayList<>();
    private final List<String> limited = new ArrayList<>();
    private final List<Condition> conditions = new ArrayList<>();

    Maker(Random random) {
      this.random = random;
    }

    CoupledKnowledge make() {
      base.model("A-1", "alpha", Map.of());
      base.model("B-1", "beta", Map.of());
      for (String id : random.nextBoolean() ? List.of("a", "b") : List.of("a", "b", "c")) {
        observe(id);
      }
      computed();
      tables();
      questions();
      return new CoupledKnowledge(base.build(), conditions);
    }

    private void observe(String id) {
      Condition applies = random.nextInt(8) == 0 ? is("family", "alpha") : Condition.ALWAYS;
      Interval range = Interval.closed(BigFraction.ZERO, BigFraction.of(TOP));
      Domain domain = new Domain.Measured(UNIT, range, Optional.empty());
      base.reading(id, domain, Access.OUTSIDE, 1, applies);
      observed.add(id);
      all.add(id);
    }

    private void computed() {
      switch (random.nextInt(5)) {
        case 4 -> twins();
        case 0 -> derive("z-twin", Map.of("a", 1));
        case 1 -> derive("z-difference", Map.of("a", 1, "b", -1));
        case 2 -> {
          derive("z-difference", Map.of("a", 1, "b", -1));
          derive("z-second", Map.of("b", 1, observed.get(observed.size() == 3 ? 2 : 0), 2));
        }
        default -> {
          derive("difference", Map.of("a", 1, "b", -1));
          derive("twin", Map.of("difference", 1));
        }
      }
    }

    /** Old and new limits of two readings, all of which follow a third. */
    private void twins() {
      if (!observed.contains("c")) {
        observe("c");
      }
      for (String id : List.of("a", "b")) {
        derive(id + "-new", Map.of(id, 1));
        table(id, "c", random.nextInt(2));
        table(id + "-new", "c", random.nextInt(2));
        limited.addAll(List.of(id, id + "-new"));
      }
    }

    private void derive(String id, Map<String, Integer> factors) {
      Map<String, BigFraction> terms = new TreeMap<>();
      factors.forEach((operand, factor) -> terms.put(operand, BigFraction.of(factor)));
      Derived form = Derived.linear(new TreeMap<>(terms), BigFraction.of(random.nextInt(3), 2));
      base.derived(id, UNIT, form);
      all.add(id);
    }

    private void tables() {
      for (String id : all) {
        if (random.nextInt(5) < 3 && limited.size() < 2) {
          table(id);
          limited.add(id);
        }
      }
    }

    private void table(String id) {
      String driver = any(all);
      table(id, driver, driver.equals(id) || drives(id, driver) ? 2 : random.nextInt(3));
    }

    private void table(String id, String driver, int kind) {
      LimitsTableBuilder table =
          switch (kind) {
            case 0 -> LimitsTableBuilder.interpolated(id, driver, "family");
            case 1 -> LimitsTableBuilder.stepped(id, driver, "family");
            default -> LimitsTableBuilder.fixed(id, "family");
          };
      boolean apart = random.nextBoolean();
      rows(table, kind, apart ? is("family", "alpha") : Condition.ALWAYS);
      if (apart) {
        rows(table, kind, not(is("family", "alpha")));
      }
      base.limits(table.build());
    }

    /** Whether limits would follow each other in a circle. */
    private boolean drives(String id, String driver) {
      return base.build().limits().containsKey(driver)
          && base.build().limits().get(driver).drivers().contains(id);
    }

    private void rows(LimitsTableBuilder table, int kind, Condition builds) {
      int middle = 1 + random.nextInt(2);
      int[] points = {random.nextInt(2) - 1, middle, TOP + random.nextInt(2) - 1};
      boolean openLow = random.nextInt(5) == 0;
      for (int i = 0; i < 3 - kind; i++) {
        int low = random.nextInt(TOP);
        String lowText = openLow ? "-" : "" + low;
        String highText = "" + (low + random.nextInt(TOP - low + 1));
        switch (kind) {
          case 0 -> table.at(builds, "" + points[i], lowText, highText);
          case 1 -> table.over(builds, "" + points[i], "" + points[i + 1], lowText, highText);
          default -> table.row(builds, lowText, highText);
        }
      }
    }

    private void questions() {
      limited.forEach(id -> conditions.add(limits(id, Side.BELOW)));
      int count = 2 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        conditions.add(in(any(all), interval()));
      }
      conditions.add(in(all.get(all.size() - 1), interval()));
      if (random.nextInt(6) == 0) {
        conditions.add(notTaken(any(observed)));
      }
    }

    private Interval interval() {
      BigFraction low = BigFraction.of(random.nextInt(2 * TOP), 2);
      return switch (random.nextInt(4)) {
        case 0 -> Interval.above(low);
        case 1 -> Interval.atLeast(low);
        case 2 -> Interval.closed(low, low.add(random.nextInt(2)));
        default -> Interval.below(low);
      };
    }

    private String any(List<String> ids) {
      return Sorted.set(ids).stream().skip(random.nextInt(ids.size())).findFirst().orElseThrow();
    }
  }
}
