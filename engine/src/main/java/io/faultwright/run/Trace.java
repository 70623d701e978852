package io.faultwright.run;

import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;

/**
 * What the rules of a symptom say about a situation, and why.
 *
 * @param symptom id of the symptom that was asked
 * @param verdict the status and the answers
 * @param rules what became of each rule; empty unless the rules were looked at
 * @param stillPossible faults not concluded that some rule may yet conclude
 * @param ruledOut faults that no rule can conclude any more, and faults that a rule excludes
 * @param next the reading or equipment fact to ask next, where something is open
 * @param notes whatever else has to be said, in a fixed order
 */
public record Trace(
    String symptom,
    Verdict verdict,
    SortedMap<String, RuleTrace> rules,
    SortedSet<String> stillPossible,
    SortedSet<String> ruledOut,
    Optional<String> next,
    List<Note> notes) {
  public Trace {
    rules = Sorted.copy(rules);
    stillPossible = Sorted.set(stillPossible);
    ruledOut = Sorted.set(ruledOut);
    notes = List.copyOf(notes);
  }

  public Status status() {
    return verdict.status();
  }

  public SortedSet<Answer> answers() {
    return verdict.answers();
  }

  public boolean contradictory() {
    return verdict.contradictory();
  }

  /** Ids of the rules that fire. */
  public SortedSet<String> fired() {
    return Sorted.set(
        rules.entrySet().stream()
            .filter(rule -> rule.getValue() instanceof RuleTrace.Fired)
            .map(Map.Entry::getKey)
            .toList());
  }
}
