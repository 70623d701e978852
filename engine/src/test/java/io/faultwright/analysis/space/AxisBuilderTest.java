package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.atLeast;
import static io.faultwright.model.Conditions.below;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.notTaken;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Axes of readings and of their places against limits. */
class AxisBuilderTest {
  private static final KnowledgeBase KB =
      new KnowledgeBaseBuilder()
          .model("A-1", "alpha", Map.of())
          .measured("m", "K", "0", "9")
          .choice("s", "lo", "ok", "hi")
          .build();

  private static final List<Cell> SPECIAL = List.of(new Cell.NotTaken(), new Cell.Absent());

  private static AxisBuilder builder(Condition... counted) {
    return new AxisBuilder(KB, all(counted).tests().toList());
  }

  /** The axis of m, cut below 5 and around 2. */
  private static Axis measured(AxisBuilder builder, List<Cell> special) {
    Reading reading = KB.readings().get("m");
    SortedSet<Cut> cuts = new TreeSet<>(Cut.around(BigFraction.of(2)));
    cuts.addAll(AxisBuilder.cuts(all(below("m", "5"), notTaken("m")).tests().toList()));
    return builder.measured(reading, (Domain.Measured) reading.domain(), cuts, special);
  }

  private static BitSet cells(int... cells) {
    BitSet set = new BitSet();
    Arrays.stream(cells).forEach(set::set);
    return set;
  }

  private static Cell stretch(int low, boolean atLow, int high, boolean atHigh) {
    return new Cell.Stretch(
        new Interval(
            Optional.of(new End(BigFraction.of(low), atLow)),
            Optional.of(new End(BigFraction.of(high), atHigh))));
  }

  @Test
  void stretchesThenWhatIsSpecial() {
    assertEquals(
        List.of(
            stretch(0, true, 2, false),
            stretch(2, true, 2, true),
            stretch(2, false, 5, false),
            stretch(5, true, 9, true),
            new Cell.NotTaken(),
            new Cell.Absent()),
        measured(builder(), SPECIAL).cells());
    assertEquals(new Axis.OfReading("m"), measured(builder(), SPECIAL).subject());
  }

  /** Only conditions that count tell groups apart; what has no condition is one group. */
  @Test
  void groupsAreWhatConditionsTellApart() {
    assertEquals(List.of(0, 0, 0, 1, 2, 3), measured(builder(below("m", "5")), SPECIAL).groups());
    assertEquals(
        List.of(0, 1, 1, 2),
        measured(builder(below("m", "5"), atLeast("m", "2")), List.of()).groups());
    assertEquals(List.of(0, 0, 0, 0, 1, 2), measured(builder(notTaken("m")), SPECIAL).groups());
    assertEquals(List.of(0, 0, 0, 0, 0, 0), measured(builder(is("s", "lo")), SPECIAL).groups());
    assertEquals(4, measured(builder(below("m", "5")), SPECIAL).groupCount());
    assertEquals(1, measured(builder(), SPECIAL).groupCount());
  }

  @Test
  void choices() {
    Reading reading = KB.readings().get("s");
    Domain.Choice domain = (Domain.Choice) reading.domain();
    Axis axis = builder(is("s", "lo")).choice(reading, domain, List.of(new Cell.NotTaken()));
    assertEquals(
        List.of(new Cell.Word("lo"), new Cell.Word("ok"), new Cell.Word("hi"), new Cell.NotTaken()),
        axis.cells());
    assertEquals(List.of(0, 1, 2, 3), axis.groups());
    assertEquals(List.of(0, 0, 0), builder().choice(reading, domain, List.of()).groups());
  }

  @Test
  void placesAgainstLimits() {
    Axis judged = builder(limits("m", Side.BELOW)).sides("m");
    assertEquals(6, judged.cells().size());
    assertEquals(6, judged.groupCount());
    assertEquals(new Axis.OfSide("m"), judged.subject());
    assertEquals(cells(0, 1, 2), judged.sides());
    assertEquals(cells(1), judged.side(Side.WITHIN));
    assertEquals(1, builder(below("m", "5")).sides("m").groupCount());
    assertEquals(1, builder(is("s", "lo")).sides("m").groupCount());
  }

  @Test
  void cutsOfSomeTests() {
    assertEquals(
        new TreeSet<>(List.of(new Cut(BigFraction.of(3), true), new Cut(BigFraction.of(5), false))),
        AxisBuilder.cuts(all(below("m", "5"), above("m", "3"), notTaken("m")).tests().toList()));
  }

  @Test
  void stretchesInsideAnInterval() {
    Axis axis = measured(builder(), SPECIAL);
    BigFraction two = BigFraction.of(2);
    BigFraction five = BigFraction.of(5);
    assertEquals(4, axis.stretches());
    assertEquals(cells(0, 1, 2), axis.within(Interval.below(five)));
    assertEquals(cells(3), axis.within(Interval.atLeast(five)));
    assertEquals(cells(2, 3), axis.within(Interval.above(two)));
    assertEquals(cells(1), axis.within(Interval.point(two)));
    assertEquals(cells(0, 1), axis.within(Interval.atMost(two)));
    assertEquals(cells(0, 1, 2, 3), axis.within(new Interval(Optional.empty(), Optional.empty())));
    assertEquals(cells(), axis.within(Interval.above(BigFraction.of(9))));
    assertEquals(cells(), axis.within(Interval.below(BigFraction.of(0))));
    assertEquals(cells(0, 1, 2, 3, 4, 5), axis.all());
    assertEquals(cells(4), axis.where(Cell.NotTaken.class::isInstance));
  }

  @Test
  void marksAreTheEndsOfStretches() {
    assertEquals(
        new TreeSet<>(
            List.of(BigFraction.of(0), BigFraction.of(2), BigFraction.of(5), BigFraction.of(9))),
        AxisBuilder.marks(measured(builder(), SPECIAL)));
  }
}
