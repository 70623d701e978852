package io.faultwright.analysis.redundancy;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A condition with one of its parts left out, for every part of its {@code all} and {@code any}.
 */
final class Dropped {
  private Dropped() {}

  /** From each part that can be left out to what then remains, left to right. */
  static Map<Condition, Condition> each(Condition condition) {
    Map<Condition, Condition> results = new LinkedHashMap<>();
    collect(condition, remaining -> remaining, results, new IdentityHashMap<>());
    return results;
  }

  private static void collect(
      Condition condition,
      Function<Condition, Condition> around,
      Map<Condition, Condition> results,
      Map<Condition, Boolean> seen) {
    if (seen.put(condition, true) != null) {
      return;
    }
    if (condition instanceof All all) {
      collectParts(all.parts(), All::new, around, results, seen);
    } else if (condition instanceof Any any && any.parts().size() > 1) {
      collectParts(any.parts(), Any::new, around, results, seen);
    }
  }

  private static void collectParts(
      List<Condition> parts,
      Function<List<Condition>, Condition> make,
      Function<Condition, Condition> around,
      Map<Condition, Condition> results,
      Map<Condition, Boolean> seen) {
    for (int i = 0; i < parts.size(); i++) {
      int at = i;
      List<Condition> rest = new ArrayList<>(parts);
      Condition dropped = rest.remove(at);
      results.put(dropped, around.apply(make.apply(rest)));
      collect(
          dropped,
          inner -> {
            List<Condition> replaced = new ArrayList<>(parts);
            replaced.set(at, inner);
            return around.apply(make.apply(replaced));
          },
          results,
          seen);
    }
  }
}
