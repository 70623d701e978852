package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.analysis.space.Column.Split;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Splits of one axis; the cheapest of each was found by trying all by hand. */
class ColumnTest {
  private static BitSet cells(int... cells) {
    BitSet set = new BitSet();
    Arrays.stream(cells).forEach(set::set);
    return set;
  }

  private static BitSet range(int from, int to) {
    return cells(IntStream.range(from, to).toArray());
  }

  private static int[] all(BitSet... sets) {
    return IntStream.range(0, sets.length).toArray();
  }

  private static Optional<Split> best(int size, BitSet left, BitSet... sets) {
    return new Column(7, size, sets).best(all(sets), left);
  }

  @Test
  void workGrowsFasterThanTheSets() {
    assertEquals(0, Column.cost(0));
    assertEquals(Math.log(2), Column.cost(1), 1e-12);
    assertEquals(3 * Math.log(4), Column.cost(3), 1e-12);
  }

  @Test
  void setsThatLieApartArePartedByTheirCells() {
    Split split = best(3, range(0, 3), cells(0), cells(0), cells(1, 2)).orElseThrow();
    assertEquals(7, split.axis());
    assertEquals(cells(0), split.one());
    assertEquals(cells(1, 2), split.other());
    assertEquals(Column.cost(2) + Column.cost(1), split.cost(), 1e-12);
  }

  /** Parting 1 from 0 and 2 leaves two and two; each other way leaves three in one half. */
  @Test
  void theEvenPartingIsCheaper() {
    Split split =
        best(3, range(0, 3), cells(1), cells(1), cells(0), cells(2), cells(0, 2)).orElseThrow();
    assertEquals(cells(0, 2), split.one());
    assertEquals(cells(1), split.other());
    assertEquals(Column.cost(3) + Column.cost(2), split.cost(), 1e-12);
  }

  @Test
  void aSetInBothHalvesCountsTwice() {
    Split split = best(2, range(0, 2), cells(0), cells(0, 1), cells(1)).orElseThrow();
    assertEquals(2 * Column.cost(2), split.cost(), 1e-12);
    assertEquals(cells(0), split.one());
  }

  @Test
  void whereAllLieAlikeThereIsNothingToPart() {
    assertEquals(Optional.empty(), best(3, range(0, 3), cells(0, 1), cells(0, 1)));
    assertEquals(Optional.empty(), best(3, cells(0, 1), cells(0, 1), cells(0, 1, 2)));
  }

  @Test
  void onlyTheCellsThatAreLeftCount() {
    Split split = best(4, cells(2, 3), cells(0, 2), cells(1, 3)).orElseThrow();
    assertEquals(cells(2), split.one());
    assertEquals(cells(3), split.other());
  }

  @Test
  void manyCellsAreCutInTwoStretches() {
    Split split = best(20, range(0, 20), range(0, 5), range(2, 5), range(10, 20)).orElseThrow();
    assertEquals(range(0, 5), split.one());
    assertEquals(range(5, 20), split.other());
    assertEquals(Column.cost(2) + Column.cost(1), split.cost(), 1e-12);
  }

  @Test
  void aCutLiesAmongTheCellsThatAreLeft() {
    Split split = best(20, range(6, 18), range(0, 9), range(12, 20)).orElseThrow();
    assertEquals(range(6, 9), split.one());
    assertEquals(range(9, 18), split.other());
    assertEquals(2 * Column.cost(1), split.cost(), 1e-12);
  }

  @Test
  void aSingleCellOfManyCannotBeCut() {
    assertEquals(Optional.empty(), best(20, cells(4), range(0, 9), range(3, 20)));
  }

  @Test
  void setsThatMeetSomeCells() {
    Column column = new Column(0, 3, new BitSet[] {cells(0), cells(1), cells(0, 2)});
    assertArrayEquals(new int[] {0, 2}, column.meeting(new int[] {0, 1, 2}, cells(0)));
    assertArrayEquals(new int[] {2}, column.meeting(new int[] {1, 2}, cells(2)));
  }
}
