package io.faultwright.pipeline;

import io.faultwright.analysis.tolerance.ToleranceBox;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Many situations within the tolerances of one: corners, whole numbers, where all thresholds of the
 * random knowledge bases lie, the limits themselves, differences of whole numbers, each with a
 * little to both sides, and random points.
 */
final class BoxSamples {
  private static final BigFraction LITTLE = BigFraction.of(1, 997);
  private static final int RANDOM_POINTS = 4;

  private final KnowledgeBase knowledge;
  private final Situation given;
  private final Build build;
  private final ToleranceBox box;
  private final List<String> order;
  private final Random random;

  BoxSamples(KnowledgeBase knowledge, Situation given, Build build, long seed) {
    this.knowledge = knowledge;
    this.given = given;
    this.build = build;
    this.box = new ToleranceBox(knowledge, given);
    this.random = new Random(seed);
    this.order =
        given.readings().keySet().stream()
            .filter(id -> given.readings().get(id) instanceof Value.Number)
            .sorted(Comparator.comparing(this::followers))
            .toList();
  }

  /** Drivers come before what follows them. */
  private int followers(String reading) {
    return Optional.ofNullable(knowledge.limits().get(reading))
        .map(table -> table.drivers().size())
        .orElse(0);
  }

  void forEach(Consumer<Situation> consumer) {
    fill(0, new TreeMap<>(given.readings()), consumer);
  }

  private void fill(int next, SortedMap<String, Value> readings, Consumer<Situation> consumer) {
    if (next == order.size()) {
      consumer.accept(new Situation(given.equipment(), readings));
      return;
    }
    String reading = order.get(next);
    for (BigFraction value : values(reading, readings)) {
      readings.put(reading, new Value.Number(value));
      fill(next + 1, readings, consumer);
    }
    readings.put(reading, given.readings().get(reading));
  }

  private TreeSet<BigFraction> values(String reading, SortedMap<String, Value> before) {
    Interval reach = box.reach(reading, build).orElseThrow();
    BigFraction low = reach.low().orElseThrow().value();
    BigFraction high = reach.high().orElseThrow().value();
    TreeSet<BigFraction> values = new TreeSet<>(List.of(low, high, amount(given, reading)));
    List<BigFraction> marks = new ArrayList<>();
    for (int whole = -4; whole <= 4; whole++) {
      BigFraction mark = BigFraction.of(whole);
      marks.add(mark);
      before.forEach(
          (id, value) -> {
            if (order.indexOf(id) < order.indexOf(reading) && value instanceof Value.Number other) {
              marks.add(other.amount().add(mark));
            }
          });
    }
    band(reading, before)
        .ifPresent(
            band -> {
              band.low().ifPresent(marks::add);
              band.high().ifPresent(marks::add);
            });
    marks.forEach(mark -> values.addAll(List.of(mark.subtract(LITTLE), mark, mark.add(LITTLE))));
    for (int i = 0; i < RANDOM_POINTS; i++) {
      values.add(low.add(high.subtract(low).multiply(BigFraction.of(random.nextInt(1000), 999))));
    }
    values.removeIf(value -> !reach.contains(value));
    return values;
  }

  private static BigFraction amount(Situation situation, String reading) {
    return ((Value.Number) situation.readings().get(reading)).amount();
  }

  private Optional<Band> band(String reading, SortedMap<String, Value> before) {
    LimitsTable table = knowledge.limits().get(reading);
    if (table == null) {
      return Optional.empty();
    }
    List<BigFraction> drivers =
        table.drivers().stream()
            .map(before::get)
            .filter(Value.Number.class::isInstance)
            .map(value -> ((Value.Number) value).amount())
            .toList();
    return Limits.of(table, build).at(drivers);
  }

  /** Whether a situation differs from the given one only within the tolerances. */
  boolean holds(Situation situation) {
    return situation.readings().keySet().equals(given.readings().keySet())
        && situation.readings().entrySet().stream()
            .allMatch(entry -> holds(entry.getKey(), entry.getValue()));
  }

  private boolean holds(String reading, Value value) {
    return value instanceof Value.Number number
        ? box.reach(reading, build).orElseThrow().contains(number.amount())
            && ((Domain.Measured) knowledge.readings().get(reading).domain())
                .range()
                .contains(number.amount())
        : value.equals(given.readings().get(reading));
  }
}
