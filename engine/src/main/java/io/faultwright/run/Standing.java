package io.faultwright.run;

import io.faultwright.compile.Facts;
import io.faultwright.compile.Truth;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Where the rules of a symptom stand once Drools has decided their conditions. */
final class Standing {
  private final SymptomRules rules;
  private final Facts facts;

  Standing(SymptomRules rules, Facts facts) {
    this.rules = rules;
    this.facts = facts;
  }

  Truth truth(String rule) {
    return facts.decided(rules.position(rule));
  }

  /**
   * Rules that surely fire and stand instead of this one; they count though silenced themselves.
   */
  SortedSet<String> silencers(String rule) {
    return silencers(rule, Truth.TRUE);
  }

  /** Rules that stand instead of this one and are decided so. */
  SortedSet<String> silencers(String rule, Truth decided) {
    SortedSet<String> found = new TreeSet<>(rules.insteadOf(rule));
    found.removeIf(other -> truth(other) != decided);
    return found;
  }

  boolean fires(Rule rule) {
    return truth(rule.id()) == Truth.TRUE
        && silencers(rule.id()).isEmpty()
        && silencers(rule.id(), Truth.UNKNOWN).isEmpty();
  }

  boolean couldFire(Rule rule) {
    return truth(rule.id()) != Truth.FALSE && silencers(rule.id()).isEmpty();
  }

  SortedSet<Answer> answers() {
    SortedSet<Answer> answers = new TreeSet<>();
    where(this::fires).forEach(rule -> answers.addAll(rule.conclusion().answers()));
    return answers;
  }

  /** Whether some rule may yet answer. */
  boolean open() {
    return where(this::couldFire).anyMatch(rule -> !rule.conclusion().answers().isEmpty());
  }

  boolean contradictory(SortedSet<Answer> answers) {
    SortedSet<String> excluded = excluded();
    return answers.stream()
            .anyMatch(a -> a instanceof Answer.OfFault && excluded.contains(a.name()))
        || answers.stream().anyMatch(a -> answers.tailSet(a).stream().anyMatch(b -> clash(a, b)));
  }

  private boolean clash(Answer a, Answer b) {
    return !a.equals(b) && !(together(a, b));
  }

  private boolean together(Answer a, Answer b) {
    return a instanceof Answer.OfFault
        && b instanceof Answer.OfFault
        && symptom().together().contains(FaultPair.of(a.name(), b.name()));
  }

  /** Faults that a rule which fires excludes. */
  SortedSet<String> excluded() {
    SortedSet<String> faults = new TreeSet<>();
    where(this::fires).forEach(rule -> faults.addAll(excluded(rule)));
    return faults;
  }

  /** Faults, concluded ones left out, that some rule may yet conclude and none excludes. */
  SortedSet<String> stillPossible() {
    SortedSet<String> faults = concluded(this::couldFire);
    faults.removeAll(concluded(this::fires));
    faults.removeAll(excluded());
    return faults;
  }

  /** Faults that no rule can conclude any more, and faults that a rule excludes. */
  SortedSet<String> ruledOut() {
    SortedSet<String> faults = concluded(rule -> true);
    faults.removeAll(concluded(this::couldFire));
    faults.addAll(excluded());
    return faults;
  }

  private SortedSet<String> concluded(Predicate<Rule> which) {
    SortedSet<String> faults = new TreeSet<>();
    where(which).forEach(rule -> faults.addAll(concluded(rule)));
    return faults;
  }

  private static Collection<String> concluded(Rule rule) {
    return rule.conclusion() instanceof Conclusion.Conclude conclude
        ? conclude.faults()
        : new TreeSet<>();
  }

  private static Collection<String> excluded(Rule rule) {
    return rule.conclusion() instanceof Conclusion.Exclude exclude
        ? exclude.faults()
        : new TreeSet<>();
  }

  private Stream<Rule> where(Predicate<Rule> which) {
    return symptom().rules().values().stream().filter(which);
  }

  private Symptom symptom() {
    return rules.symptom();
  }
}
