package io.faultwright.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class HistogramTest {
  @Test
  void countsLikeAMap() {
    Random random = new Random(20260302);
    Map<Integer, Long> expected = new TreeMap<>();
    Histogram histogram = new Histogram();
    for (int i = 0; i < 20_000; i++) {
      int value = random.nextInt(random.nextInt(1_500) + 1) - 1;
      assertTrue(histogram.add(value, new Room(1)));
      expected.merge(value, 1L, Long::sum);
    }
    expected.forEach((value, count) -> assertEquals(count, histogram.in(value)));
    assertEquals(0, histogram.in(2_000));
    assertEquals(20_000, histogram.rows());
    expected.remove(Classes.NOT_TAKEN);
    assertEquals(expected.keySet(), histogram.taken());
  }

  @Test
  void knownClassNeedsNoRoom() {
    Histogram histogram = new Histogram();
    Room one = new Room(1);
    assertTrue(histogram.add(7, one));
    assertTrue(histogram.add(7, one));
    assertFalse(histogram.add(8, one));
    assertEquals(2, histogram.rows());
  }
}
