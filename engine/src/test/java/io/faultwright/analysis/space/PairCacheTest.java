package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What is remembered is right, and recent things are remembered. */
class PairCacheTest {
  private final PairCache cache = new PairCache();

  @Test
  void pairsAreOrdered() {
    assertEquals(-1, cache.get(3, 4));
    cache.put(3, 4, 9, 5);
    assertEquals(9, cache.get(3, 4));
    assertEquals(-1, cache.get(4, 3));
    cache.put(3, 4, 7, 5);
    assertEquals(7, cache.get(3, 4));
  }

  @Test
  void growingForgetsNothing() {
    cache.put(3, 4, 9, 5);
    cache.put(0, 1, 2, 5);
    cache.put(70, 80, 90, 1_500);
    assertEquals(9, cache.get(3, 4));
    assertEquals(2, cache.get(0, 1));
    assertEquals(90, cache.get(70, 80));
  }

  @Test
  void manyAreRememberedOnceItHasGrown() {
    cache.put(1, 1, 1, 1_500);
    int kept = 0;
    for (int i = 0; i < 1_000; i++) {
      cache.put(i, i + 7, i, 1_500);
    }
    for (int i = 0; i < 1_000; i++) {
      int known = cache.get(i, i + 7);
      assertTrue(known == i || known == -1, "nothing wrong is remembered");
      kept += known == i ? 1 : 0;
    }
    assertTrue(kept > 700, "remembered: " + kept);
  }
}
