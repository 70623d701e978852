package io.faultwright.sheet;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import java.util.Collection;
import java.util.List;

/** The tables a person may name. */
final class Tables {
  private Tables() {}

  /**
   * Every name must be that of a reading with a table of limits.
   *
   * @throws Unreadable with every name that is not
   */
  static void require(KnowledgeBase kb, Collection<String> readings) {
    List<Problem> problems =
        readings.stream()
            .filter(id -> !kb.limits().containsKey(id))
            .distinct()
            .map(id -> unknown(id, kb))
            .toList();
    if (!problems.isEmpty()) {
      throw new Unreadable(problems);
    }
  }

  private static Problem unknown(String id, KnowledgeBase kb) {
    boolean reading = kb.readings().containsKey(id);
    return new Problem(
        List.of(),
        "there is no table of limits for `" + id + "`",
        reading
            ? "write it below `limits:` first, with its `by` and `rows: []`"
            : NearMatch.help(id, kb.limits().keySet()));
  }
}
