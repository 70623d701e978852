package io.faultwright.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class RowCountsTest {
  @Test
  void countsAddUp() {
    RowCounts.Counter counter = new RowCounts.Counter();
    counter.read();
    counter.run(Optional.of(true));
    counter.read();
    counter.skipped();
    counter.read();
    counter.run(Optional.empty());
    assertEquals(new RowCounts(3, 2, 1, 1, 0, 1), counter.counts());
    assertEquals(new RowCounts(6, 4, 2, 2, 0, 2), counter.counts().plus(counter.counts()));
  }

  @Test
  void rowThatIsNeitherRunNorSkippedIsADefect() {
    RowCounts.Counter counter = new RowCounts.Counter();
    counter.read();
    assertThrows(IllegalStateException.class, counter::counts);
  }
}
