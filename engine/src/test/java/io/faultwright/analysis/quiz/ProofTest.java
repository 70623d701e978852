package io.faultwright.analysis.quiz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.quiz.Item;
import io.faultwright.quiz.ItemKind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What Drools says of the items of the small knowledge base. */
class ProofTest {
  @Test
  void droolsAgreesWithEveryItem() {
    DroolsJudge judge = new DroolsJudge(SmallQuiz.knowledge());
    List<Item> items = SmallQuiz.maker("morning").all(9);
    Map<ItemKind, Integer> judged = new EnumMap<>(ItemKind.class);
    items.forEach(
        item -> {
          judge.confirm(item);
          judged.merge(item.kind(), 1, Integer::sum);
        });
    for (ItemKind kind :
        List.of(ItemKind.WHICH_FAULT, ItemKind.AGAINST_LIMITS, ItemKind.WHAT_SEPARATES)) {
      assertTrue(judged.getOrDefault(kind, 0) > 3, judged::toString);
    }
    assertEquals(
        0, items.stream().filter(item -> item.kind() == ItemKind.OWN).count(), "own items");
  }
}
