package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.BitSet;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** There is time until the deadline, and none from then on. */
class DeadlineTest {
  private final AtomicLong clock = new AtomicLong();
  private final Deadline deadline = new Deadline(10, clock::get);

  @Test
  void theTimeIsOverAtTheDeadline() {
    clock.set(9);
    assertEquals(1, deadline.nanosLeft());
    assertDoesNotThrow(deadline::check);
    clock.set(10);
    assertEquals(0, deadline.nanosLeft());
    assertThrows(OutOfTime.class, deadline::check);
    clock.set(12);
    assertThrows(OutOfTime.class, deadline::check);
  }

  @Test
  void soLongFromNow() {
    Duration hour = Duration.ofHours(1);
    long left = Deadline.in(hour).nanosLeft();
    assertTrue(left <= hour.toNanos() && left > hour.minusMinutes(5).toNanos());
    assertDoesNotThrow(Deadline.in(hour)::check);
    assertDoesNotThrow(Deadline.NEVER::check);
  }

  @Test
  void pairsAreNotLookedForAfterIt() {
    Diagrams diagrams = new Diagrams(new int[] {2}, deadline);
    BitSet first = new BitSet();
    first.set(0);
    Parts parts = Parts.of(diagrams, Diagrams.ALL, new int[] {diagrams.literal(0, first)});
    clock.set(10);
    assertThrows(OutOfTime.class, () -> new Meetings(diagrams, parts));
  }
}
