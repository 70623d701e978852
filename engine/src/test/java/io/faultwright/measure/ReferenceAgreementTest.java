package io.faultwright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.measure.Table.Row;
import java.math.BigInteger;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Our gaps and contradictions against the decision-table analysis of kie-dmn-validation 10.2.0, on
 * generated tables in which every rule has a conclusion of its own.
 */
class ReferenceAgreementTest {
  private static Table damaged(Table table, long seed) {
    Defects defects = new Defects(seed);
    int some = Math.max(1, table.rows().size() / 12);
    return defects.widened(defects.without(table, some), some);
  }

  static Stream<Arguments> damaged() {
    return Stream.of(
        Arguments.of("mixed", PartitionTable.of(Columns.mixed(4), 12, 12, 1)),
        Arguments.of("mixed, more columns", PartitionTable.of(Columns.mixed(8), 40, 40, 2)),
        Arguments.of("mixed, open ends", PartitionTable.withMixedEnds(Columns.mixed(4), 25, 25, 3)),
        Arguments.of("mixed, many rules", PartitionTable.of(Columns.mixed(6), 60, 60, 4)),
        Arguments.of("quantities", PartitionTable.of(Columns.amounts(2), 12, 12, 5)),
        Arguments.of("quantities, three", PartitionTable.of(Columns.amounts(3), 30, 30, 6)),
        Arguments.of(
            "quantities, open ends", PartitionTable.withMixedEnds(Columns.amounts(3), 30, 30, 7)),
        Arguments.of("choices", PartitionTable.of(Columns.choices(4, 4), 24, 24, 8)),
        Arguments.of("choices of two", PartitionTable.of(Columns.choices(7, 2), 30, 30, 9)),
        Arguments.of("choices of many", PartitionTable.of(Columns.choices(3, 9), 40, 40, 10)));
  }

  static Stream<Arguments> full() {
    return Stream.of(
        Arguments.of("mixed", PartitionTable.of(Columns.mixed(5), 30, 30, 11)),
        Arguments.of("open ends", PartitionTable.withMixedEnds(Columns.mixed(5), 30, 30, 12)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("full")
  void aPartitionHasNeitherGapNorOverlap(String name, Table table) {
    Judgement ours = agreeOn(table);
    assertTrue(ours.gaps().isEmpty() && ours.overlaps().isEmpty());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("damaged")
  void rulesTakenOutAndWidenedAreFoundByBoth(String name, Table table) {
    Judgement ours = agreeOn(damaged(table, 17));
    assertFalse(ours.gaps().isEmpty() || ours.overlaps().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(ints = {13, 14, 15})
  void rulesThatCoverLittleLeaveMostOpen(int seed) {
    Judgement ours = agreeOn(WideTable.of(Columns.choices(4, 3), 8, 2, seed));
    assertFalse(ours.gaps().isEmpty() || ours.overlaps().isEmpty());
  }

  /** Where choices are texts the reference finds all overlaps, and no gap that is none. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("damaged")
  void choicesAsTextsGiveTheSameOverlapsAndNoOtherGap(String name, Table table) {
    Table broken = damaged(table, 17);
    Judgement ours = OurJudgement.of(broken, TableBase.space(broken));
    Judgement reference = DmnReference.inWords(broken).judgement();
    assertEquals(reference.overlaps(), ours.overlaps(), "overlapping pairs");
    assertFalse(reference.gaps().isEmpty());
    assertEquals(cells(broken, ours.gaps()), cells(broken, together(reference, ours)));
  }

  /** Three rules over 27 situations; counted by hand, three each, one shared by two. */
  @Test
  void aGapAmongTextsThatTheReferenceLeavesOut() {
    Values all = Values.closed(0, 2);
    Table table =
        new Table(
            Columns.choices(3, 3),
            List.of(
                new Row("a", List.of(all, Values.of(0), Values.of(1)), "a"),
                new Row("b", List.of(Values.of(1), all, Values.of(2)), "b"),
                new Row("c", List.of(Values.of(1), Values.of(1), all), "c")));
    Judgement ours = agreeOn(table);
    assertEquals(Set.of("b c"), ours.overlaps());
    assertEquals(BigInteger.valueOf(27 - 8), cells(table, ours.gaps()));
    BigInteger left = cells(table, DmnReference.inWords(table).judgement().gaps());
    assertEquals(BigInteger.valueOf(9), left);
  }

  /**
   * At 100 and 20, by hand: the first rule asks for at least 50 of the second reading, the second
   * rule for less than 100 of the first. Such slices of no width the reference leaves out.
   */
  @Test
  void aGapOfNoWidthThatTheReferenceLeavesOut() {
    Table table =
        new Table(
            Columns.amounts(2),
            List.of(
                new Row("a", List.of(Span.closed(50, 100), Span.closed(50, 100)), "a"),
                new Row("b", List.of(new Span(0, 200), new Span(1, 201)), "b")));
    List<Part> point = List.of(Span.closed(100, 100), Span.closed(20, 20));
    Judgement ours = OurJudgement.of(table, TableBase.space(table));
    Judgement reference = DmnReference.inNumbers(table).judgement();
    assertTrue(holds(ours, point));
    assertFalse(holds(reference, point));
    assertEquals(new Boxes(table, BoxSubtraction.gaps(table)).cells(), cells(table, ours.gaps()));
    assertEquals(volume(table, reference), volume(table, ours));
  }

  private static boolean holds(Judgement judgement, List<Part> point) {
    return judgement.gaps().stream()
        .anyMatch(gap -> gap.get(0).meets(point.get(0)) && gap.get(1).meets(point.get(1)));
  }

  private static BigInteger volume(Table table, Judgement judgement) {
    return new Boxes(table, judgement.gaps()).volume();
  }

  private static BigInteger cells(Table table, List<List<Part>> boxes) {
    return new Boxes(table, boxes).cells();
  }

  private static List<List<Part>> together(Judgement one, Judgement other) {
    return Stream.concat(one.gaps().stream(), other.gaps().stream()).toList();
  }

  private static Judgement agreeOn(Table table) {
    SymptomSpace space = TableBase.space(table);
    Judgement ours = OurJudgement.of(table, space);
    Judgement reference = DmnReference.inNumbers(table).judgement();
    Boxes gaps = new Boxes(table, ours.gaps());
    Boxes expected = new Boxes(table, reference.gaps());
    assertEquals(reference.overlaps(), ours.overlaps(), "overlapping pairs");
    assertEquals(expected.volume(), gaps.volume(), "gap volume");
    assertEquals(expected.cells(), gaps.cells(), "gap cells");
    assertEquals(expected.cells(), distinguishable(space), "counted gap");
    return ours;
  }

  private static BigInteger distinguishable(SymptomSpace space) {
    return space.space().distinguishable(GapAnalysis.gap(space));
  }
}
