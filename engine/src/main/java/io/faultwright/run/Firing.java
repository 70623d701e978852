package io.faultwright.run;

import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * What the technician is told, and by which rules; quicker than with the reasons.
 *
 * @param verdict what is told
 * @param rules ids of the rules that fire and answer; none unless the rules were asked
 * @param known what was known, derived readings included
 */
public record Firing(Verdict verdict, SortedSet<String> rules, Situation known) {
  public Firing {
    rules = Sorted.set(rules);
  }

  static Firing silent(Verdict verdict, Situation known) {
    return new Firing(verdict, Sorted.set(List.<String>of()), known);
  }
}
