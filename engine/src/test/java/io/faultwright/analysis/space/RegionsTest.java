package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Few maximal boxes around a set, worked out by hand. */
class RegionsTest {
  private static final Condition A = is("a", "yes");
  private static final Condition B = is("b", "yes");
  private static final Condition C = is("c", "yes");
  private static final Condition ALPHA = is("family", "alpha");

  private static final KnowledgeBase KB =
      new KnowledgeBaseBuilder()
          .model("A-1", "alpha", Map.of())
          .model("B-1", "beta", Map.of())
          .yesNo("a")
          .yesNo("b")
          .yesNo("c")
          .build();

  private final Space space =
      Space.of(KB, KB.equipment().builds(), List.of(ALPHA, A, B, C), List.of());
  private final Diagrams diagrams = space.diagrams();
  private final Regions regions = new Regions(space);

  private int where(Condition condition) {
    return diagrams.and(space.consistent(), space.truth(condition).isTrue());
  }

  private void covered(Condition wanted, Condition possible, String... boxes) {
    List<Box> found = regions.cover(where(wanted), where(possible));
    assertEquals(List.of(boxes), found.stream().map(box -> words(box, possible)).toList());
    assertEquals(Diagrams.NONE, regions.without(where(all(wanted, possible)), found));
  }

  private String words(Box box, Condition possible) {
    return new BoxWords(space, where(possible))
        .tests(box).stream()
            .map(test -> test.reading() + ": " + test.accepts())
            .collect(Collectors.joining(", "));
  }

  @Test
  void nothingIsCoveredByNothing() {
    assertEquals(List.of(), regions.cover(Diagrams.NONE, space.consistent()));
    assertEquals(where(A), regions.without(where(A), List.of()));
  }

  @Test
  void oneBoxIsEnoughForABox() {
    covered(Condition.ALWAYS, Condition.ALWAYS, "");
    covered(all(A, not(B)), Condition.ALWAYS, "a: yes, b: no");
  }

  @Test
  void theLargestBoxComesFirst() {
    covered(any(not(A), all(A, B, C)), Condition.ALWAYS, "a: no", "b: yes, c: yes");
  }

  /** From a: yes, b: yes the box grows along b, the later axis; then along a it cannot. */
  @Test
  void laterAxesAreFreedFirst() {
    covered(any(A, B), Condition.ALWAYS, "a: yes", "b: yes");
  }

  @Test
  void theEquipmentIsFreedBeforeReadings() {
    covered(any(ALPHA, B), Condition.ALWAYS, "b: yes", "family: alpha");
  }

  @Test
  void whatCannotHappenMayLieInABox() {
    covered(all(A, B), not(all(A, not(B))), "a: yes");
  }

  /** The first box found, a and b, lies in the two others. */
  @Test
  void aBoxThatOthersCoverIsLeftOut() {
    covered(any(all(A, not(C)), all(B, C)), Condition.ALWAYS, "a: yes, c: no", "b: yes, c: yes");
  }

  @Test
  void noMoreBoxesThanAskedFor() {
    int wanted = where(any(all(A, not(C)), all(B, C)));
    assertEquals(1, regions.cover(wanted, space.consistent(), 1).size());
    List<Box> first = regions.cover(where(any(A, B)), space.consistent(), 1);
    assertEquals(List.of("a: yes"), first.stream().map(b -> words(b, Condition.ALWAYS)).toList());
    assertEquals(where(all(not(A), B)), regions.without(where(any(A, B)), first));
    assertEquals(0, regions.cover(wanted, space.consistent(), 0).size());
    assertEquals(2, regions.cover(wanted, space.consistent(), 9).size());
  }

  @Test
  void exactlyTheWantedOfThePossible() {
    for (Condition wanted :
        Arrays.asList(any(all(A, B), all(not(B), C)), not(any(all(A, C), B)), any(A, ALPHA, C))) {
      List<Box> boxes = regions.cover(where(wanted), where(not(all(B, C))));
      int rest = regions.without(where(not(all(B, C))), boxes);
      assertEquals(where(all(not(wanted), not(all(B, C)))), rest);
    }
  }
}
