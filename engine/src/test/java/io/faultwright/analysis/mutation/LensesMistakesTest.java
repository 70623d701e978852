package io.faultwright.analysis.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.adequacy.MutantStatus.Fate;
import io.faultwright.analysis.published.LensRows;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The rule set of Cendrowska, "PRISM", International Journal of Man-Machine Studies 27:349-370,
 * 1987, and the 24 rows of the UCI data set "Lenses" as cases.
 */
class LensesMistakesTest {
  private final KnowledgeBase kb = LensRows.knowledge();

  @Test
  void allRowsNoticeEachOfTheNineRulesThatIsLeftOut() {
    List<MutantStatus> deletions = deletions(IntStream.range(0, 24));
    assertEquals(9, deletions.size());
    assertEquals(List.of(), survivors(deletions));
  }

  /** Leaving rule 1 out uncovers one row; without that row nothing notices. */
  @Test
  void withoutTheOnlyRowThatNeedsRuleOneItsLossSurvives() {
    int needed = LensRows.uncoveredBy("rule-1");
    List<MutantStatus> deletions = deletions(IntStream.range(0, 24).filter(row -> row != needed));
    assertEquals(List.of("rule-1"), survivors(deletions));
    MutantStatus first = deletions.get(0);
    assertEquals(LensRows.situation(needed), first.shownBy().orElseThrow().situation());
  }

  private List<MutantStatus> deletions(IntStream rows) {
    List<Case> cases = rows.mapToObj(row -> LensRows.recorded(kb, row)).toList();
    return new MutationAnalysis(kb, cases, Deadline.NEVER)
        .pieces(kb.symptoms().values()).stream()
            .flatMap(piece -> piece.get().stream())
            .filter(one -> one.mutant().operator() == Operator.RULE_DELETED)
            .toList();
  }

  private static List<String> survivors(List<MutantStatus> mutants) {
    return mutants.stream()
        .filter(one -> one.fate() != Fate.KILLED)
        .map(one -> one.mutant().rule().orElseThrow())
        .toList();
  }
}
