package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What is worked out when first asked for is worked out once. */
class LazyTest {
  @Test
  void workedOutOnceWhenFirstAskedFor() {
    AtomicInteger asked = new AtomicInteger();
    Lazy<Integer> lazy = new Lazy<>(asked::incrementAndGet);
    assertEquals(Optional.empty(), lazy.ifKnown());
    assertEquals(1, lazy.get());
    assertEquals(1, lazy.get());
    assertEquals(Optional.of(1), lazy.ifKnown());
  }
}
