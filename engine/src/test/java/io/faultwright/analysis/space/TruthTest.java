package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Truth tables of three values: strong logic after Kleene, "On notation for ordinal numbers", 1938.
 */
class TruthTest {
  private static final Condition P = is("p", "yes");
  private static final Condition Q = is("q", "yes");

  private static final KnowledgeBase KB =
      new KnowledgeBaseBuilder()
          .model("A-1", "alpha", Map.of())
          .model("B-1", "beta", Map.of())
          .yesNo("p")
          .applies("p", is("family", "alpha"))
          .yesNo("q")
          .measured("m", "K", "0", "9")
          .limits(
              LimitsTableBuilder.fixed("m", "family").row(is("family", "alpha"), "2", "4").build())
          .build();

  private static final Space SPACE =
      Space.of(
          KB,
          KB.equipment().builds(),
          List.of(P, Q, notTaken("p"), limits("m", Side.BELOW), is("family", "alpha")),
          List.of());

  /** What a condition is in the situations where another holds. */
  private static String truth(Condition condition, Condition there) {
    Diagrams diagrams = SPACE.diagrams();
    int here = diagrams.and(SPACE.consistent(), SPACE.truth(there).isTrue());
    boolean holds = diagrams.within(here, SPACE.truth(condition).isTrue());
    boolean fails = diagrams.within(here, SPACE.truth(not(condition)).isTrue());
    boolean may = diagrams.within(here, SPACE.truth(condition).mayBeTrue());
    boolean mayNot = diagrams.within(here, SPACE.truth(not(condition)).mayBeTrue());
    String surely = holds ? "true" : fails ? "false" : "";
    return surely.isEmpty() ? may && mayNot ? "unknown" : may || mayNot ? "?" : "never" : surely;
  }

  /** What a condition is where p and q are true, unknown and false; q is always known. */
  private static void table(String expected, Condition condition) {
    String seen = "";
    for (Condition q : List.of(Q, not(Q))) {
      for (Condition p : List.of(P, notTaken("p"), is("p", "no"))) {
        seen += truth(condition, all(p, q)).charAt(0);
      }
    }
    assertEquals(expected, seen);
  }

  @Test
  void oneTest() {
    table("tuftuf", P);
    table("futfut", not(P));
    table("tttfff", Q);
  }

  @Test
  void andOrAndNot() {
    table("tuffff", all(P, Q));
    table("futttt", not(all(P, Q)));
    table("ttttuf", any(P, Q));
    table("ffffut", not(any(P, Q)));
    table("tuffut", any(all(P, Q), all(not(P), not(Q))));
  }

  @Test
  void whatCannotBeTakenIsKnown() {
    table("ftfftf", notTaken("p"));
    table("tfttft", not(notTaken("p")));
  }

  @Test
  void emptyConditions() {
    table("tttttt", all());
    table("ffffff", any());
  }

  /** On beta there is no p: neither a test on it nor its opposite ever comes true. */
  @Test
  void aReadingThatIsNotThere() {
    Condition beta = not(is("family", "alpha"));
    assertEquals("never", truth(P, beta));
    assertEquals("never", truth(notTaken("p"), beta));
    assertEquals("false", truth(is("family", "alpha"), beta));
    assertEquals("true", truth(any(P, Q), all(beta, Q)));
  }

  @Test
  void aFigureThatIsMissing() {
    Condition beta = not(is("family", "alpha"));
    assertEquals("unknown", truth(limits("m", Side.BELOW), beta));
    assertEquals("true", truth(limits("m", Side.BELOW), limits("m", Side.BELOW)));
    assertEquals("false", truth(limits("m", Side.BELOW), limits("m", Side.ABOVE)));
    assertEquals("true", truth(limits("m", Side.BELOW, Side.ABOVE), limits("m", Side.ABOVE)));
  }
}
