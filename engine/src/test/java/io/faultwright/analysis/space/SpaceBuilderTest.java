package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.atLeast;
import static io.faultwright.model.Conditions.atMost;
import static io.faultwright.model.Conditions.below;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Curve;
import io.faultwright.model.Derived;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.SafetyClass;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Which axes a space gets, in which order, and which of their cells go together. */
class SpaceBuilderTest {
  private static final Unit KELVIN = Units.find("K").orElseThrow();

  private static Space space(KnowledgeBaseBuilder base, Condition... asked) {
    return space(base, List.of(asked));
  }

  private static Space space(KnowledgeBaseBuilder base, List<Condition> asked) {
    KnowledgeBase knowledge = base.build();
    return Space.of(knowledge, knowledge.equipment().builds(), asked, List.of());
  }

  private static boolean isPossible(Space space, Condition... conditions) {
    int there = space.truth(all(conditions)).isTrue();
    return space.diagrams().and(space.consistent(), there) != Diagrams.NONE;
  }

  private static List<List<String>> equipment(Space space) {
    return space.axes().get(0).cells().stream()
        .map(cell -> ((Cell.Builds) cell).builds().stream().map(Build::toString).toList())
        .toList();
  }

  /** The readings in the order of their axes. */
  private static List<String> order(Space space) {
    return space.axes().stream()
        .flatMap(
            axis ->
                axis.subject() instanceof Axis.OfReading of
                    ? List.of(of.reading()).stream()
                    : List.<String>of().stream())
        .toList();
  }

  private static List<Cell> cells(Space space, String reading) {
    return space.axis(new Axis.OfReading(reading)).cells();
  }

  private static KnowledgeBaseBuilder models() {
    return new KnowledgeBaseBuilder()
        .model("A-1", "alpha", Map.of())
        .model("A-2", "alpha", Map.of())
        .model("B-1", "beta", Map.of());
  }

  @Test
  void buildsThatATestTellsApart() {
    KnowledgeBaseBuilder base = models().yesNo("p");
    assertEquals(List.of(List.of("A-1", "A-2", "B-1")), equipment(space(base, is("p", "yes"))));
    assertEquals(
        List.of(List.of("A-1", "A-2"), List.of("B-1")),
        equipment(space(base, is("family", "beta"))));
    assertEquals(
        List.of(List.of("A-1"), List.of("A-2"), List.of("B-1")),
        equipment(space(base, is("family", "beta"), is("model", "A-1", "B-1"))));
  }

  @Test
  void buildsThatATableOrAReadingTellsApart() {
    KnowledgeBaseBuilder base =
        models()
            .yesNo("p")
            .applies("p", is("model", "A-1", "B-1"))
            .measured("m", "K", "0", "9")
            .measured("other", "K", "0", "9")
            .limits(
                LimitsTableBuilder.fixed("m", "family")
                    .row(is("family", "alpha"), "2", "4")
                    .row(is("family", "beta"), "2", "4")
                    .build())
            .limits(
                LimitsTableBuilder.fixed("other", "model")
                    .row(is("model", "A-2"), "2", "4")
                    .row(not(is("model", "A-2")), "2", "4")
                    .build());
    assertEquals(
        List.of(List.of("A-1", "B-1"), List.of("A-2")), equipment(space(base, is("p", "yes"))));
    assertEquals(
        List.of(List.of("A-1", "A-2"), List.of("B-1")),
        equipment(space(base, limits("m", Side.BELOW))));
    assertEquals(
        List.of(List.of("A-1", "B-1"), List.of("A-2")),
        equipment(space(base, limits("other", Side.BELOW))));
    assertEquals(List.of(List.of("A-1", "A-2", "B-1")), equipment(space(base, below("m", "4"))));
  }

  private static Polyline curve(int... ys) {
    List<Knot> knots = new ArrayList<>();
    for (int i = 0; i < ys.length; i++) {
      knots.add(new Knot(BigFraction.of(i), BigFraction.of(ys[i])));
    }
    return Polyline.through(knots);
  }

  /** X says twice the pressure up to 4, Y its treble up to a given pressure. */
  private static KnowledgeBaseBuilder refrigerants(int lengthOfY) {
    TreeMap<String, Refrigerant> known = new TreeMap<>();
    Polyline twice = curve(0, 2, 4, 6, 8);
    Polyline treble = lengthOfY == 4 ? curve(0, 3, 6, 9, 12) : curve(0, 3, 6, 9);
    known.put("X", new Refrigerant("X", SafetyClass.A1, twice, twice, ""));
    known.put("Y", new Refrigerant("Y", SafetyClass.A1, treble, treble, ""));
    return models()
        .refrigerant("A-1", "X")
        .refrigerant("A-2", "Y")
        .refrigerant("B-1", "X")
        .measured("p", "K", "0", "4")
        .measured("q", "K", "0", "4")
        .derived(
            "saturated",
            KELVIN,
            Derived.along(new Curve.OfSaturation(Line.DEW, known), Derived.same("p")))
        .difference("gap", "p", "q");
  }

  @Test
  void refrigerantsTellBuildsApartWhereACurveIsRead() {
    KnowledgeBaseBuilder base = refrigerants(4);
    assertEquals(
        List.of(List.of("A-1", "B-1"), List.of("A-2")),
        equipment(space(base, above("saturated", "6"))));
    assertEquals(List.of(List.of("A-1", "A-2", "B-1")), equipment(space(base, above("gap", "1"))));
    Space space = space(base, above("saturated", "6"), below("p", "3"), is("model", "A-2"));
    assertTrue(isPossible(space, above("saturated", "6"), below("p", "3"), is("model", "A-2")));
    assertTrue(
        !isPossible(space, above("saturated", "6"), below("p", "3"), not(is("model", "A-2"))));
  }

  /** A reading lacks a value where it can be refused, where a curve ends, and nowhere else. */
  @Test
  void readingsThatCannotBeTaken() {
    Cell refused = new Cell.NotTaken();
    Space whole = space(refrigerants(4), above("saturated", "6"), above("gap", "1"));
    assertTrue(!cells(whole, "saturated").contains(refused));
    assertTrue(!cells(whole, "gap").contains(refused));
    assertTrue(!cells(whole, "p").contains(refused));
    Space ending = space(refrigerants(3), above("saturated", "6"), above("gap", "1"));
    assertTrue(cells(ending, "saturated").contains(refused));
    assertTrue(!cells(ending, "gap").contains(refused));
    Space asked = space(refrigerants(4), above("saturated", "6"), above("gap", "1"), notTaken("q"));
    assertTrue(cells(asked, "q").contains(refused));
    assertTrue(cells(asked, "gap").contains(refused), "what is computed from it");
    assertTrue(!cells(asked, "saturated").contains(refused));
    assertTrue(!cells(asked, "p").contains(refused));
    assertTrue(isPossible(asked, notTaken("q"), above("saturated", "6")));
    assertTrue(!isPossible(asked, notTaken("q"), above("gap", "1")));
  }

  /** Where no curve ends a computed reading has a value as soon as its operands have one. */
  @Test
  void aComputedReadingLacksAValueOnlyWithItsOperands() {
    Condition hot = above("saturated", "6");
    Space whole = space(refrigerants(4), hot, notTaken("saturated"), notTaken("p"));
    assertTrue(isPossible(whole, notTaken("saturated"), notTaken("p")));
    assertTrue(!isPossible(whole, notTaken("saturated"), not(notTaken("p"))));
    Space ending = space(refrigerants(3), hot, notTaken("saturated"), above("p", "3"));
    assertTrue(isPossible(ending, notTaken("saturated"), above("p", "3"), not(notTaken("p"))));
    assertTrue(
        !isPossible(ending, notTaken("saturated"), not(above("p", "3")), not(notTaken("p"))));
  }

  /** Old limits rise and new ones fall along the separator; they cross at 5 for a, at 7 for b. */
  @Test
  void aSeparatorIsCutWhereItPartsGroups() {
    KnowledgeBaseBuilder base =
        models()
            .measured("ambient", "°C", "0", "10")
            .measured("a", "bar", "0", "20")
            .measured("b", "bar", "0", "20")
            .derived("a-new", Units.find("bar").orElseThrow(), Derived.same("a"))
            .derived("b-new", Units.find("bar").orElseThrow(), Derived.same("b"));
    crossing(base, "a", "0", "10", "6", "4");
    crossing(base, "b", "0", "10", "14", "4");
    Condition oldA = limits("a", Side.BELOW);
    Condition newA = limits("a-new", Side.BELOW);
    Condition oldB = limits("b", Side.BELOW);
    Condition newB = limits("b-new", Side.BELOW);
    Space space = space(base, oldA, newA, oldB, newB);
    assertTrue(isPossible(space, oldA, not(newA)), "above 5");
    assertTrue(isPossible(space, newB, not(oldB)), "below 7");
    assertTrue(isPossible(space, oldA, not(newA), newB, not(oldB)), "between");
    assertTrue(!isPossible(space, newA, not(oldA), oldB, not(newB)));
  }

  /** Low limits: the old ones from one figure to another over 0 to 10, the new ones as well. */
  private static void crossing(
      KnowledgeBaseBuilder base, String id, String from, String to, String newFrom, String newTo) {
    base.limits(
            LimitsTableBuilder.interpolated(id, "ambient")
                .at(Condition.ALWAYS, "0", from, "-")
                .at(Condition.ALWAYS, "10", to, "-")
                .build())
        .limits(
            LimitsTableBuilder.interpolated(id + "-new", "ambient")
                .at(Condition.ALWAYS, "0", newFrom, "-")
                .at(Condition.ALWAYS, "10", newTo, "-")
                .build());
  }

  private static KnowledgeBaseBuilder letters() {
    KnowledgeBaseBuilder base = models();
    for (String id : List.of("a", "b", "c", "d", "e", "f")) {
      base.measured(id, "K", "0", "9");
    }
    return base.difference("z", "a", "c");
  }

  @Test
  void theMostAskedComesFirstThenTheId() {
    assertEquals(
        List.of("c", "a", "b"),
        order(
            space(letters(), below("b", "2"), below("a", "2"), below("c", "2"), above("c", "3"))));
  }

  @Test
  void whatIsComputedFromEachOtherStandsTogether() {
    assertEquals(
        List.of("a", "c", "z", "b", "d"),
        order(
            space(
                letters(),
                below("z", "2"),
                below("b", "2"),
                below("a", "2"),
                below("c", "2"),
                below("d", "2"))));
  }

  @Test
  void driversComeBeforeWhatFollowsThem() {
    KnowledgeBaseBuilder base =
        letters()
            .limits(
                LimitsTableBuilder.stepped("a", "e")
                    .over(Condition.ALWAYS, "0", "9", "1", "2")
                    .build())
            .limits(
                LimitsTableBuilder.stepped("e", "f")
                    .over(Condition.ALWAYS, "0", "9", "1", "2")
                    .build());
    Space space = space(base, limits("a", Side.BELOW), limits("e", Side.BELOW), below("b", "2"));
    assertEquals(List.of("f", "e", "a", "b"), order(space));
    assertEquals(
        List.of(1, 2, 3, 4, 5, 6),
        List.of(
            space.position(new Axis.OfReading("f")).orElseThrow(),
            space.position(new Axis.OfReading("e")).orElseThrow(),
            space.position(new Axis.OfSide("e")).orElseThrow(),
            space.position(new Axis.OfReading("a")).orElseThrow(),
            space.position(new Axis.OfSide("a")).orElseThrow(),
            space.position(new Axis.OfReading("b")).orElseThrow()));
  }

  /** So many conditions, each on one of the pairs a and f, b and e, c and d. */
  private static List<Condition> pairs(int count) {
    List<List<String>> pairs = List.of(List.of("a", "f"), List.of("b", "e"), List.of("c", "d"));
    List<Condition> conditions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<String> pair = pairs.get(i % 3);
      conditions.add(all(below(pair.get(0), "2"), atLeast(pair.get(1), "2")));
    }
    return conditions;
  }

  @Test
  void fewConditionsKeepTheOrderOfImportance() {
    List<Condition> few = pairs(45);
    few.add(is("family", "alpha"));
    few.add(is("family", "alpha"));
    assertEquals(List.of("a", "b", "c", "d", "e", "f"), order(space(letters(), few)));
  }

  @Test
  void ofManyConditionsThoseAskedTogetherStandTogether() {
    for (int count : List.of(48, 96, 480)) {
      List<String> order = order(space(letters(), pairs(count)));
      for (String pair : List.of("af", "be", "cd")) {
        int apart = order.indexOf(pair.substring(0, 1)) - order.indexOf(pair.substring(1));
        assertEquals(1, Math.abs(apart), order::toString);
      }
    }
  }

  /** The driver leads although it is asked together with what comes last. */
  @Test
  void driversLeadInAnyOrder() {
    KnowledgeBaseBuilder base =
        letters()
            .limits(
                LimitsTableBuilder.stepped("b", "f")
                    .over(Condition.ALWAYS, "0", "9", "1", "2")
                    .build());
    List<Condition> many = pairs(48);
    many.add(limits("b", Side.BELOW));
    List<String> order = order(space(base, many));
    assertEquals("f", order.get(0));
    assertEquals(List.of("a", "b", "c", "d", "e", "f"), order.stream().sorted().toList());
    assertEquals(1, Math.abs(order.indexOf("b") - order.indexOf("e")), order::toString);
    assertEquals(1, Math.abs(order.indexOf("c") - order.indexOf("d")), order::toString);
  }

  @Test
  void whereALimitPassesAMarkTheDriverIsCut() {
    KnowledgeBaseBuilder base =
        letters()
            .limits(
                LimitsTableBuilder.interpolated("a", "b")
                    .at(Condition.ALWAYS, "0", "0", "-")
                    .at(Condition.ALWAYS, "9", "9", "-")
                    .build());
    Space space = space(base, limits("a", Side.BELOW), atLeast("a", "4"), atMost("b", "6"));
    assertTrue(isPossible(space, limits("a", Side.BELOW), atLeast("a", "4")));
    assertTrue(AxisBuilder.marks(space.axis(new Axis.OfReading("b"))).contains(BigFraction.of(4)));
    Space asked =
        space(base, limits("a", Side.BELOW), atLeast("a", "4"), atMost("b", "4"), atMost("b", "6"));
    assertTrue(!isPossible(asked, limits("a", Side.BELOW), atLeast("a", "4"), atMost("b", "4")));
  }
}
