package io.faultwright.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Against brute force over the rows themselves, which the separator does not keep. */
class SeparatorTest {
  private static final Place NOWHERE = new Place("", 1, 1, 1);
  private static final List<String> FROST = List.of("even", "part", "none");

  private final Random random = new Random(20260302);
  private final ClassBook classes = new ClassBook(FieldBase.KB);

  private Map<String, Value> row(int shift) {
    Map<String, Value> row = new HashMap<>();
    row.put("line", number(random.nextInt(20) + shift));
    row.put("room", number(random.nextInt(20)));
    if (random.nextInt(10) > 0) {
      int word = Math.min(2, random.nextInt(3) + (shift > 6 ? 1 : 0));
      row.put("frost", new Value.Word(FROST.get(word)));
    }
    if (random.nextInt(20) == 0) {
      row.put("room", new Value.NotTaken());
    }
    return row;
  }

  /** A quarter of a step finer than the reading is read. */
  private static Value number(int quarters) {
    return new Value.Number(BigFraction.of(quarters, 4));
  }

  private List<Map<String, Value>> rows(int count, int shift) {
    return Stream.generate(() -> row(shift)).limit(count).toList();
  }

  @Test
  void figuresAreThoseOfTheRowsAndNoThresholdIsBetter() {
    int separated = 0;
    for (int round = 0; round < 300; round++) {
      List<Map<String, Value>> wanted = rows(5 + random.nextInt(20), random.nextInt(20));
      List<Map<String, Value>> others = rows(5 + random.nextInt(60), 0);
      Contrast contrast = new Separator(classes).contrast(sample(wanted), sample(others));
      if (contrast.separation().isPresent()) {
        separated++;
        Separation found = contrast.separation().get();
        assertEquals(meeting(found, wanted), found.disagreeing());
        assertEquals(meeting(found, others), found.agreeing());
        assertEquals(giving(found, wanted), found.ofDisagreeing());
        assertTrue(best(wanted, others) <= found.advantage().doubleValue() + 1e-9);
      }
    }
    assertTrue(separated > 60, () -> "too few rounds tell anything");
  }

  private Sample sample(List<Map<String, Value>> rows) {
    Sample sample = new Sample();
    rows.forEach(row -> sample.add(NOWHERE, row, classes, new Room(1_000)));
    return sample;
  }

  private static long meeting(Separation found, List<Map<String, Value>> rows) {
    return rows.stream()
        .filter(row -> row.containsKey(found.subject()))
        .filter(row -> meets(found.pattern(), row.get(found.subject())))
        .count();
  }

  private static long giving(Separation found, List<Map<String, Value>> rows) {
    return rows.stream().filter(row -> row.containsKey(found.subject())).count();
  }

  private static boolean meets(Condition.Pattern pattern, Value value) {
    if (pattern instanceof InInterval within) {
      return value instanceof Value.Number number && within.interval().contains(number.amount());
    }
    return pattern instanceof OneOf oneOf
        ? value instanceof Value.Word word && oneOf.values().contains(word.id())
        : value instanceof Value.NotTaken;
  }

  /** Over thresholds at multiples of half a step, which the classes are cut at, and all words. */
  private static double best(List<Map<String, Value>> wanted, List<Map<String, Value>> others) {
    List<Separation> all = new ArrayList<>();
    for (String id : List.of("line", "room")) {
      for (int half = 0; half <= 20; half++) {
        BigFraction at = Decimals.parse("0.5").multiply(half);
        Stream.of(Interval.above(at), Interval.atLeast(at), Interval.below(at), Interval.atMost(at))
            .forEach(part -> all.add(of(id, new InInterval(part), wanted, others)));
      }
    }
    FROST.forEach(
        word -> all.add(of("frost", new OneOf(Sorted.set(List.of(word))), wanted, others)));
    return all.stream().mapToDouble(one -> one.advantage().doubleValue()).max().orElseThrow();
  }

  private static Separation of(
      String id,
      Condition.Pattern pattern,
      List<Map<String, Value>> wanted,
      List<Map<String, Value>> others) {
    Separation empty = new Separation(id, pattern, 0, 1, 0, 1);
    return new Separation(
        id,
        pattern,
        meeting(empty, wanted),
        Math.max(1, giving(empty, wanted)),
        meeting(empty, others),
        Math.max(1, giving(empty, others)));
  }

  @Test
  void withoutRoomNothingIsSaid() {
    Sample wanted = new Sample();
    wanted.add(NOWHERE, row(0), classes, new Room(1));
    assertEquals(
        Contrast.Kind.NOT_COUNTED,
        new Separator(classes).contrast(wanted, sample(rows(9, 0))).kind());
  }
}
