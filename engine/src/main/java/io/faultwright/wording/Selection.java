package io.faultwright.wording;

import java.util.Collection;
import java.util.List;

/**
 * Some values out of all, as the shortest kind of list.
 *
 * @param kind how to say it
 * @param values the values to name, in the order of all
 */
record Selection(Kind kind, List<String> values) {
  /** How a choice of values is said. */
  enum Kind {
    EVERY,
    ONLY,
    ALL_BUT,
    NONE
  }

  /** Names the chosen values, or those left out where that is much shorter. */
  static Selection of(Collection<String> chosen, List<String> all) {
    List<String> left = all.stream().filter(value -> !chosen.contains(value)).toList();
    if (left.isEmpty() && all.size() > 1) {
      return new Selection(Kind.EVERY, all);
    }
    List<String> kept = all.stream().filter(chosen::contains).toList();
    if (kept.isEmpty()) {
      return new Selection(Kind.NONE, List.of());
    }
    return !left.isEmpty() && kept.size() > 2 && left.size() * 2 <= kept.size()
        ? new Selection(Kind.ALL_BUT, left)
        : new Selection(Kind.ONLY, kept);
  }
}
