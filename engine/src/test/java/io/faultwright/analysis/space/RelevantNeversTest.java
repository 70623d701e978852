package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.atMost;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.Never;
import io.faultwright.model.Symptom;
import io.faultwright.model.SymptomBuilder;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which statements about what cannot be are heeded for a symptom, and what the others exclude. */
class RelevantNeversTest {
  private static KnowledgeBaseBuilder base() {
    return new KnowledgeBaseBuilder()
        .model("A-1", "alpha", Map.of())
        .model("B-1", "beta", Map.of())
        .model("C-1", "gamma", Map.of())
        .yesNo("p")
        .yesNo("q")
        .yesNo("r")
        .yesNo("far")
        .measured("d", "K", "0", "9")
        .measured("m", "K", "0", "9")
        .measured("e", "K", "0", "9")
        .difference("gap", "m", "e")
        .limits(
            LimitsTableBuilder.stepped("m", "d").over(Condition.ALWAYS, "0", "9", "1", "2").build())
        .never("m0-general", all(is("family", "alpha"), is("p", "yes")));
  }

  private static List<String> related(KnowledgeBaseBuilder base, Condition asked) {
    return ids(of(base, symptom("x").never("z-own", is("r", "yes")), asked).related());
  }

  private static RelevantNevers of(
      KnowledgeBaseBuilder base, SymptomBuilder symptom, Condition asked) {
    Symptom built = symptom.build();
    return RelevantNevers.of(base.build(), built, List.of(asked));
  }

  private static List<String> ids(List<Never> nevers) {
    return nevers.stream().map(Never::id).toList();
  }

  @Test
  void theSymptomsOwnComeFirst() {
    assertEquals(List.of("z-own", "m0-general"), related(base(), is("p", "yes")));
    assertEquals(List.of("z-own"), related(base(), is("q", "yes")));
  }

  @Test
  void aReadingOfItsOwnStatementsCounts() {
    KnowledgeBaseBuilder base = base().never("n", all(is("r", "no"), is("far", "yes")));
    assertEquals(List.of("z-own", "n"), related(base, is("q", "yes")));
  }

  @Test
  void oneStatementLeadsToAnother() {
    KnowledgeBaseBuilder base =
        base()
            .never("a-last", all(is("far", "yes"), is("r", "no")))
            .never("b-first", all(is("q", "no"), is("far", "no")));
    RelevantNevers nevers = of(base, symptom("x"), is("q", "yes"));
    assertEquals(List.of("b-first", "a-last"), ids(nevers.related()));
    assertEquals(List.of("m0-general"), ids(nevers.unrelated()));
  }

  @Test
  void aStatementOnEquipmentAloneIsAlwaysHeeded() {
    KnowledgeBaseBuilder base = base().never("n", is("family", "beta"));
    assertEquals(List.of("z-own", "n"), related(base, is("q", "yes")));
  }

  @Test
  void whatLimitsFollowAndWhatIsComputedFromCounts() {
    KnowledgeBaseBuilder base =
        base().never("on-d", atMost("d", "3")).never("on-e", atMost("e", "3"));
    assertEquals(List.of("z-own", "on-d"), related(base, limits("m", Side.BELOW)));
    assertEquals(List.of("z-own", "on-e"), related(base, atMost("gap", "1")));
    assertEquals(List.of("z-own"), related(base, is("q", "no")));
  }

  /** Together they leave nothing of alpha; of beta they leave {@code far: no}. */
  @Test
  void unrelatedStatementsCanOnlyExcludeEquipment() {
    KnowledgeBaseBuilder base =
        base()
            .never("n1", all(is("family", "alpha", "beta"), is("far", "yes")))
            .never("n2", all(is("family", "alpha"), is("far", "no")));
    KnowledgeBase knowledge = base.build();
    RelevantNevers nevers = of(base, symptom("x"), is("q", "yes"));
    assertEquals(List.of("m0-general", "n1", "n2"), ids(nevers.unrelated()));
    List<Build> builds = knowledge.equipment().builds();
    assertEquals(List.of("B-1", "C-1"), models(nevers.left(knowledge, builds)));
    assertEquals(List.of(), nevers.left(knowledge, List.of()));
    assertEquals(List.of(), nevers.left(knowledge, builds.subList(0, 1)));
    assertEquals(builds, new RelevantNevers(List.of(), List.of()).left(knowledge, builds));
  }

  private static List<String> models(List<Build> builds) {
    return builds.stream().map(build -> build.model().id()).toList();
  }

  @Test
  void theSymptomIsLookedAtOnWhatIsLeft() {
    KnowledgeBaseBuilder base = base().never("n", any(is("far", "yes"), is("far", "no")));
    Symptom asked = symptom("x").concludes("r1", is("q", "yes"), "f").build();
    SymptomSpace nothing = SymptomSpace.of(base.build(), asked);
    assertEquals(Diagrams.NONE, nothing.possible());
    KnowledgeBaseBuilder other =
        base().never("n", all(is("family", "beta"), any(is("far", "yes"), is("far", "no"))));
    SymptomSpace some = SymptomSpace.of(other.build(), asked);
    Axis equipment = some.space().axes().get(0);
    List<Build> kept =
        equipment.cells().stream().flatMap(cell -> ((Cell.Builds) cell).builds().stream()).toList();
    assertEquals(List.of("A-1", "C-1"), models(kept));
    assertEquals(some.space().consistent(), some.possible());
  }
}
