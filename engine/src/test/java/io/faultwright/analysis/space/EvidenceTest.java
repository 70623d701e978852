package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.NOWHERE;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What findings are shown with. */
class EvidenceTest {
  private static final Condition A = is("a", "yes");
  private static final Condition B = is("b", "yes");
  private static final Finding GAP = Finding.of(FindingKind.GAP, NOWHERE, "a gap", "close it");

  private final SymptomSpace symptom =
      SymptomSpace.of(
          new KnowledgeBaseBuilder()
              .model("A-1", "alpha", Map.of())
              .yesNo("a")
              .yesNo("b")
              .yesNo("c")
              .build(),
          symptom("x").concludes("r1", all(A, B, is("c", "yes")), "f").build());
  private final Evidence evidence = new Evidence(symptom);

  private int where(Condition condition) {
    Space space = symptom.space();
    return space.diagrams().and(space.consistent(), space.truth(condition).isTrue());
  }

  /** Seven of eight situations; the half with {@code a: no} is the largest box. */
  @Test
  void theLargestBoxOfManySituations() {
    Finding shown = evidence.show(GAP, where(any(not(A), not(B), is("c", "no"))));
    assertEquals(1, shown.region().size());
    assertEquals("no", shown.region().get(0).accepts());
    assertEquals(Optional.of(new Share(0.875, 0.875, true)), shown.share());
  }

  @Test
  void whatNoBoxDescribesHasNoRegion() {
    Finding shown = evidence.showAll(GAP, where(all(not(A), B, is("c", "no"))));
    assertEquals(List.of(), shown.region());
    assertEquals(Optional.of(new Share(0.125, 0.125, true)), shown.share());
    assertEquals(
        Map.of("a", new Value.Word("no"), "b", new Value.Word("yes"), "c", new Value.Word("no")),
        shown.witness().orElseThrow().readings());
    assertEquals("a gap", shown.message());
  }

  @Test
  void wordsForMessages() {
    assertEquals("in every situation", Evidence.words(List.of()));
    assertEquals(
        "where `a: no` and `b: yes`",
        Evidence.words(List.of(new RegionTest("a", "no"), new RegionTest("b", "yes"))));
  }
}
