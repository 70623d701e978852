package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The results divide the possible situations: none is empty, none overlap, none is left out. */
class ResultsTest {
  @Test
  void resultsDivideThePossibleSituations() {
    for (var knowledge : Demos.all()) {
      for (var symptom : knowledge.symptoms().values()) {
        SymptomSpace space = SymptomSpace.of(knowledge, symptom);
        Diagrams diagrams = space.space().diagrams();
        int union = Diagrams.NONE;
        for (Result result : Results.of(space)) {
          assertNotEquals(Diagrams.NONE, result.situations());
          assertEquals(Diagrams.NONE, diagrams.and(union, result.situations()));
          union = diagrams.or(union, result.situations());
        }
        assertEquals(space.possible(), union);
      }
    }
  }

  @Test
  void unansweredSituationsAreAResultOfTheirOwn() {
    var knowledge =
        Demos.of(
            """
            readings:
              lamp: { ask: "Is it lit?", values: yes/no }
            faults:
              fuse: { title: Fuse blown }
            equipment:
              families: { fell: { title: Fell } }
              models: { F1: { title: F1, family: fell, options: {} } }
            symptoms:
              dark:
                title: It is dark
                rules:
                  out: { when: { lamp: no }, conclude: fuse, because: It is out. }
            """);
    SymptomSpace space = SymptomSpace.of(knowledge, knowledge.symptoms().get("dark"));
    List<Result> results = Results.of(space);
    assertEquals(2, results.size());
    assertEquals(Optional.of(results), Results.upTo(2, space));
    assertEquals(Optional.empty(), Results.upTo(1, space));
    assertEquals(1, results.stream().filter(result -> result.answers().isEmpty()).count());
  }
}
