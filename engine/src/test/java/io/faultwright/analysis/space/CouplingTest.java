package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Conditions;
import io.faultwright.model.Derived;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * The space of readings that hang together against points judged one by one, over seeded random
 * knowledge bases. {@code -Drandom.coupled=5000} runs more of them.
 */
class CouplingTest {
  private static final int COUNT = Integer.getInteger("random.coupled", 200);

  @Test
  void everyPointLiesInAnAllowedCombination() {
    LongStream.range(0, COUNT).parallel().forEach(CouplingTest::samplePoints);
  }

  private static void samplePoints(long seed) {
    Space space = CoupledKnowledge.of(seed).space();
    PointCells cells = new PointCells(space);
    Random random = new Random(seed);
    List<Build> builds = space.knowledge().equipment().builds();
    for (int i = 0; i < 300; i++) {
      Build build = builds.get(random.nextInt(builds.size()));
      Map<String, Value> point = point(space, build, random);
      int[] path = cells.of(build, point);
      assertTrue(
          Paths.holds(space, space.consistent(), path),
          () -> seed + ": " + build + " " + point + " lies in " + Arrays.toString(path));
    }
  }

  /** Mostly multiples of a half, where edges lie; else of a twelfth. */
  private static Map<String, Value> point(Space space, Build build, Random random) {
    Map<String, Value> values = new TreeMap<>();
    for (Axis axis : space.axes()) {
      if (axis.subject() instanceof Axis.OfReading of && isObserved(space, of, build)) {
        int parts = random.nextInt(3) == 0 ? 12 : 2;
        int steps = random.nextInt(CoupledKnowledge.TOP * parts + 1);
        boolean refused =
            random.nextInt(10) == 0 && !axis.where(Cell.NotTaken.class::isInstance).isEmpty();
        values.put(
            of.reading(),
            refused ? new Value.NotTaken() : new Value.Number(BigFraction.of(steps, parts)));
      }
    }
    return values;
  }

  private static boolean isObserved(Space space, Axis.OfReading of, Build build) {
    var reading = space.knowledge().readings().get(of.reading());
    return reading.derived().isEmpty() && build.satisfies(reading.applies());
  }

  @Test
  void everyAllowedCombinationHoldsTheWitnessMadeForIt() {
    LongStream.range(0, COUNT).parallel().forEach(CouplingTest::sampleCombinations);
  }

  private static void sampleCombinations(long seed) {
    Space space = CoupledKnowledge.of(seed).space();
    PointCells cells = new PointCells(space);
    Random random = new Random(seed);
    for (int i = 0; i < 40; i++) {
      int[] path = Paths.any(space, space.consistent(), random);
      Situation witness = new Witness(space).of(Paths.only(space, path));
      Build build = buildOf(space, witness);
      assertArrayEquals(path, cells.of(build, witness.readings()), () -> seed + ": " + witness);
    }
  }

  private static Build buildOf(Space space, Situation witness) {
    return space.knowledge().equipment().builds().stream()
        .filter(build -> build.model().id().equals(witness.equipment().get("model")))
        .findFirst()
        .orElseThrow();
  }

  /** Nine above at the most one is at least eight apart: arithmetic, no figure from anywhere. */
  @Test
  void aDifferenceCannotBeSmallWhereItsOperandsAreFarApart() {
    KnowledgeBase knowledge =
        new KnowledgeBaseBuilder()
            .model("A-1", "alpha", Map.of())
            .measured("room", "°C", "0", "10")
            .measured("coil", "°C", "0", "10")
            .difference("gap", "room", "coil")
            .build();
    Condition apart = Conditions.all(Conditions.above("room", "9"), Conditions.atMost("coil", "1"));
    Condition eight = Conditions.atMost("gap", "8");
    Condition more = Conditions.atMost("gap", "8.5");
    Space space =
        Space.of(knowledge, knowledge.equipment().builds(), List.of(apart, eight, more), List.of());
    Diagrams diagrams = space.diagrams();
    int far = diagrams.and(space.consistent(), space.truth(apart).isTrue());
    assertEquals(Diagrams.NONE, diagrams.and(far, space.truth(eight).isTrue()));
    assertNotEquals(Diagrams.NONE, diagrams.and(far, space.truth(more).isTrue()));
  }

  /** The old limits rise from 2 to 4 and the new ones fall from 4 to 2; they meet at 3. */
  @Test
  void anOldAndANewTableOfOneReadingAreComparedExactly() {
    KnowledgeBase knowledge =
        new KnowledgeBaseBuilder()
            .model("A-1", "alpha", Map.of())
            .measured("ambient", "°C", "0", "10")
            .measured("pressure", "bar", "0", "10")
            .derived("pressure-new", Units.find("bar").orElseThrow(), Derived.same("pressure"))
            .limits(
                LimitsTableBuilder.interpolated("pressure", "ambient")
                    .at(Condition.ALWAYS, "0", "2", "-")
                    .at(Condition.ALWAYS, "10", "4", "-")
                    .build())
            .limits(
                LimitsTableBuilder.interpolated("pressure-new", "ambient")
                    .at(Condition.ALWAYS, "0", "4", "-")
                    .at(Condition.ALWAYS, "10", "2", "-")
                    .build())
            .build();
    Condition oldBelow = Conditions.limits("pressure", Side.BELOW);
    Condition newBelow = Conditions.limits("pressure-new", Side.BELOW);
    Condition cold = Conditions.below("ambient", "5");
    Condition atThree = Conditions.atLeast("pressure", "3");
    Condition lower = Conditions.below("pressure", "2");
    List<Condition> asked = List.of(oldBelow, newBelow, cold, atThree, lower);
    Space space = Space.of(knowledge, knowledge.equipment().builds(), asked, List.of());
    assertEquals(Diagrams.NONE, both(space, oldBelow, Conditions.not(newBelow), cold));
    assertNotEquals(Diagrams.NONE, both(space, newBelow, Conditions.not(oldBelow), cold));
    assertEquals(Diagrams.NONE, both(space, oldBelow, newBelow, atThree));
    assertEquals(Diagrams.NONE, both(space, lower, Conditions.not(newBelow)));
  }

  private static int both(Space space, Condition... conditions) {
    return space
        .diagrams()
        .and(space.consistent(), space.truth(Conditions.all(conditions)).isTrue());
  }
}
