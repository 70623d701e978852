package io.faultwright.run;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A second reading of what conditions mean, by plain recursion and without Drools: 1 true, 0 false,
 * 1/2 unknown; an `all` is the least of its parts, an `any` the greatest, a `not` the complement
 * (the strong tables of S. C. Kleene, "Introduction to Metamathematics", 1952, section 64; from
 * memory).
 */
final class DirectTruth {
  static final double FALSE = 0;
  static final double UNKNOWN = 0.5;
  static final double TRUE = 1;

  private final KnowledgeBase base;
  private final Situation situation;
  private final List<Build> builds;

  DirectTruth(KnowledgeBase base, Situation situation) {
    this.base = base;
    this.situation = situation;
    this.builds =
        base.equipment().builds().stream()
            .filter(
                build ->
                    situation.equipment().entrySet().stream()
                        .allMatch(fact -> has(build, fact.getKey(), List.of(fact.getValue()))))
            .toList();
  }

  /** Whether a condition holds. */
  double of(Condition condition) {
    return of(condition, true);
  }

  /** Whether it holds, or fails, as wanted; a test of what the machine lacks does neither. */
  private double of(Condition condition, boolean wanted) {
    return condition.match(
        all -> joined(all.parts(), wanted, wanted),
        any -> joined(any.parts(), wanted, !wanted),
        not -> of(not.part(), !wanted),
        test -> exists(test) ? wanted ? ofTest(test) : 1 - ofTest(test) : FALSE);
  }

  private double joined(List<Condition> parts, boolean wanted, boolean every) {
    DoubleStream each = parts.stream().mapToDouble(part -> of(part, wanted));
    return every ? each.min().orElse(TRUE) : each.max().orElse(FALSE);
  }

  private boolean exists(Condition.Test test) {
    boolean against = test.pattern() instanceof Condition.AgainstLimits;
    LimitsTable table = base.limits().get(test.subject());
    return builds.stream()
        .anyMatch(
            build ->
                has(build, test.subject())
                    && (!against || table.drivers().stream().allMatch(id -> has(build, id))));
  }

  private boolean has(Build build, String subject) {
    return !base.readings().containsKey(subject)
        || base.readings().get(subject).applies().equals(Condition.ALWAYS)
        || holds(base.readings().get(subject).applies(), build);
  }

  private double ofTest(Condition.Test test) {
    String subject = test.subject();
    if (!base.readings().containsKey(subject)) {
      return overBuilds(build -> truth(has(build, subject, values(test))));
    }
    Optional<Value> value = Optional.ofNullable(situation.readings().get(subject));
    return value.map(known -> ofReading(test, known)).orElse(UNKNOWN);
  }

  private double ofReading(Condition.Test test, Value value) {
    if (test.pattern() instanceof Condition.CannotBeTaken) {
      return truth(value.equals(new Value.NotTaken()));
    }
    return value.match(
        word -> truth(values(test).contains(word.id())),
        number -> ofNumber(test, number.amount()),
        () -> UNKNOWN);
  }

  private double ofNumber(Condition.Test test, BigFraction amount) {
    if (test.pattern() instanceof Condition.InInterval in) {
      return truth(in.interval().contains(amount));
    }
    Condition.AgainstLimits against = (Condition.AgainstLimits) test.pattern();
    LimitsTable table = base.limits().get(test.subject());
    return overBuilds(build -> againstLimits(table, build, amount, against.sides()));
  }

  private double againstLimits(
      LimitsTable table, Build build, BigFraction amount, Collection<Side> sides) {
    List<Row> rows = table.rows().stream().filter(row -> holds(row.builds(), build)).toList();
    if (table.drivers().isEmpty()) {
      return rows.size() == 1
          ? judge(rows.get(0).low(), rows.get(0).high(), amount, sides)
          : UNKNOWN;
    }
    return situation.readings().get(table.drivers().get(0)) instanceof Value.Number driver
        ? along(table, rows, driver.amount(), amount, sides)
        : UNKNOWN;
  }

  private double along(
      LimitsTable table,
      List<Row> rows,
      BigFraction driver,
      BigFraction amount,
      Collection<Side> sides) {
    List<Row> sorted = rows.stream().sorted(Comparator.comparing(DirectTruth::start)).toList();
    return table.between().get() == Between.STEP
        ? stepped(sorted, driver, amount, sides)
        : interpolated(sorted, driver, amount, sides);
  }

  /** The last stretch that has started and has not ended is the one that holds. */
  private double stepped(
      List<Row> rows, BigFraction driver, BigFraction amount, Collection<Side> sides) {
    return rows.stream()
        .filter(row -> start(row).compareTo(driver) <= 0 && end(row).compareTo(driver) >= 0)
        .reduce((earlier, later) -> later)
        .map(row -> judge(row.low(), row.high(), amount, sides))
        .orElse(UNKNOWN);
  }

  private double interpolated(
      List<Row> rows, BigFraction driver, BigFraction amount, Collection<Side> sides) {
    for (Row row : rows) {
      if (start(row).equals(driver)) {
        return judge(row.low(), row.high(), amount, sides);
      }
    }
    for (int i = 1; i < rows.size(); i++) {
      if (start(rows.get(i - 1)).compareTo(driver) < 0
          && driver.compareTo(start(rows.get(i))) < 0) {
        return between(rows.get(i - 1), rows.get(i), driver, amount, sides);
      }
    }
    return UNKNOWN;
  }

  private double between(
      Row from, Row to, BigFraction driver, BigFraction amount, Collection<Side> sides) {
    Function<Function<Row, Optional<BigFraction>>, Optional<BigFraction>> weighted =
        end ->
            end.apply(from).flatMap(a -> end.apply(to).map(b -> weighted(from, to, driver, a, b)));
    return judge(weighted.apply(Row::low), weighted.apply(Row::high), amount, sides);
  }

  /** The two values weighted by how near the driver is to the other row. */
  private static BigFraction weighted(
      Row from, Row to, BigFraction driver, BigFraction a, BigFraction b) {
    BigFraction width = start(to).subtract(start(from));
    return a.multiply(start(to).subtract(driver))
        .add(b.multiply(driver.subtract(start(from))))
        .divide(width);
  }

  private static double judge(
      Optional<BigFraction> low,
      Optional<BigFraction> high,
      BigFraction amount,
      Collection<Side> sides) {
    Side side =
        low.isPresent() && amount.compareTo(low.get()) < 0
            ? Side.BELOW
            : high.isPresent() && amount.compareTo(high.get()) > 0 ? Side.ABOVE : Side.WITHIN;
    return truth(sides.contains(side));
  }

  private static BigFraction start(Row row) {
    return row.at().get(0).low().get().value();
  }

  private static BigFraction end(Row row) {
    return row.at().get(0).high().get().value();
  }

  private double overBuilds(Function<Build, Double> truth) {
    List<Double> each = builds.stream().map(truth).distinct().toList();
    return each.size() == 1 ? each.get(0) : UNKNOWN;
  }

  private static boolean holds(Condition builds, Build build) {
    return Stream.of(builds)
        .map(Condition.Test.class::cast)
        .allMatch(test -> has(build, test.subject(), values(test)));
  }

  private static boolean has(Build build, String fact, Collection<String> values) {
    return switch (fact) {
      case "model" -> values.contains(build.model().id());
      case "family" -> values.contains(build.model().family());
      case "software" -> build.software().filter(v -> values.contains(v.text())).isPresent();
      default -> values.contains(build.model().options().get(fact));
    };
  }

  private static Collection<String> values(Condition.Test test) {
    return ((Condition.OneOf) test.pattern()).values();
  }

  private static double truth(boolean holds) {
    return holds ? TRUE : FALSE;
  }
}
