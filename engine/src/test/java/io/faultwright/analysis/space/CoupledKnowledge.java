package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.in;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;

import io.faultwright.model.Access;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Curve;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.SafetyClass;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
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
    private final SortedMap<String, Refrigerant> refrigerants = new TreeMap<>();

    Maker(Random random) {
      this.random = random;
      List.of("X", "Y").forEach(id -> refrigerants.put(id, refrigerant(id)));
    }

    CoupledKnowledge make() {
      base.model("A-1", "alpha", Map.of());
      base.model("B-1", "beta", Map.of());
      base.refrigerant("A-1", "X").refrigerant("B-1", random.nextInt(3) == 0 ? "X" : "Y");
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
      switch (random.nextInt(8)) {
        case 5 -> bend("z-over", Line.DEW, "b", -1, Derived.same("a"));
        case 6 -> {
          bend("z-over", Line.DEW, "b", -1, Derived.same("a"));
          bend("z-under", Line.BUBBLE, observed.get(observed.size() - 1), 1, Derived.same("a"));
        }
        case 7 -> {
          Derived sum = Derived.same("a").plus(Derived.same("b").times(BigFraction.of(1, 2)));
          bend("saturated", Line.DEW, sum);
          derive("z-apart", Map.of("b", -1, "saturated", 1));
        }
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

    /** What is read off a curve, and another reading with a factor. */
    private void bend(String id, Line line, String other, int factor, Derived argument) {
      Derived saturated = Derived.along(new Curve.OfSaturation(line, refrigerants), argument);
      base.derived(
          id,
          UNIT,
          saturated
              .times(BigFraction.of(factor))
              .plus(Derived.same(other).times(BigFraction.of(-factor))));
      all.add(id);
    }

    private void bend(String id, Line line, Derived argument) {
      base.derived(id, UNIT, Derived.along(new Curve.OfSaturation(line, refrigerants), argument));
      all.add(id);
    }

    private Refrigerant refrigerant(String id) {
      return new Refrigerant(id, SafetyClass.A1, curve(), curve(), "");
    }

    /** Three pieces, now and then over a part of the range only. */
    private Polyline curve() {
      List<Polyline.Knot> knots = new ArrayList<>();
      BigFraction x = BigFraction.of(random.nextInt(2), 2);
      BigFraction y = BigFraction.ZERO;
      for (int i = 0; i < 4; i++) {
        knots.add(new Polyline.Knot(x, y));
        x = x.add(BigFraction.of(1 + random.nextInt(4), 2));
        y = y.add(BigFraction.of(1 + random.nextInt(3), 2));
      }
      return Polyline.through(knots);
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
      String other = any(all);
      boolean fits = !driver.equals(id) && !drives(id, driver);
      if (fits
          && random.nextInt(4) == 0
          && !other.equals(id)
          && !other.equals(driver)
          && !drives(id, other)) {
        sloping(id, driver, other);
      } else {
        table(id, driver, fits ? random.nextInt(3) : 2);
      }
    }

    /** Figures at the points of a grid, one of which may be missing. */
    private void sloping(String id, String driver, String other) {
      LimitsTableBuilder table = LimitsTableBuilder.sloping(id, driver, other);
      int missing = random.nextInt(12);
      for (int point = 0; point < 6; point++) {
        int low = random.nextInt(TOP);
        int high = low + random.nextInt(TOP - low + 1);
        if (point != missing) {
          table.at(
              Condition.ALWAYS,
              "" + 2 * (point % 3),
              "" + (1 + 2 * (point / 3)),
              "" + low,
              "" + high);
        }
      }
      base.limits(table.build());
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
