package io.faultwright.run;

import io.faultwright.compile.Facts;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.model.Truth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Where the rules of a symptom stand once Drools has decided their conditions. */
final class Standing {
  private final SymptomRules rules;
  private final Facts facts;
  private final List<Rule> firing;

  Standing(SymptomRules rules, Facts facts) {
    this.rules = rules;
    this.facts = facts;
    this.firing = new ArrayList<>();
    for (Rule rule : rules.rules(facts, Truth.TRUE)) {
      if (!maySilence(rules.insteadOf(rule.id()))) {
        firing.add(rule);
      }
    }
  }

  private boolean maySilence(Set<String> others) {
    return !others.isEmpty() && others.stream().anyMatch(rule -> truth(rule) != Truth.FALSE);
  }

  /** The only rule that fires; absent where none does, or several. */
  Optional<Rule> only() {
    return firing.size() == 1 ? Optional.of(firing.get(0)) : Optional.empty();
  }

  /** Rules that may yet fire, those that do included. */
  private Stream<Rule> possible() {
    return Stream.of(Truth.TRUE, Truth.UNKNOWN)
        .flatMap(decided -> rules.rules(facts, decided).stream())
        .filter(rule -> silencers(rule.id()).isEmpty());
  }

  Truth truth(String rule) {
    return facts.decided(rules.position(rule));
  }

  /** Rules that stand instead of this one and surely hold; they count though silenced. */
  SortedSet<String> silencers(String rule) {
    return silencers(rule, Truth.TRUE::equals);
  }

  /** Rules that would stand instead of this one and may yet hold. */
  SortedSet<String> waitingFor(String rule) {
    return silencers(rule, Truth.UNKNOWN::equals);
  }

  private SortedSet<String> silencers(String rule, Predicate<Truth> decided) {
    SortedSet<String> found = new TreeSet<>(rules.insteadOf(rule));
    found.removeIf(other -> !decided.test(truth(other)));
    return found;
  }

  SortedSet<Answer> answers() {
    SortedSet<Answer> answers = new TreeSet<>();
    firing.forEach(rule -> answers.addAll(rule.conclusion().answers()));
    return answers;
  }

  /** Whether some rule may yet answer. */
  boolean open() {
    return possible().anyMatch(rule -> !rule.conclusion().answers().isEmpty());
  }

  boolean contradictory(SortedSet<Answer> answers) {
    SortedSet<String> excluded = excluded();
    return answers.stream()
            .anyMatch(a -> a instanceof Answer.OfFault && excluded.contains(a.name()))
        || answers.stream().anyMatch(a -> answers.tailSet(a).stream().anyMatch(b -> clash(a, b)));
  }

  private boolean clash(Answer a, Answer b) {
    return !a.equals(b) && !together(a, b);
  }

  private boolean together(Answer a, Answer b) {
    return a instanceof Answer.OfFault
        && b instanceof Answer.OfFault
        && symptom().together().contains(FaultPair.of(a.name(), b.name()));
  }

  /** Faults that a rule which fires excludes. */
  private SortedSet<String> excluded() {
    return faults(firing.stream(), Standing::excluded);
  }

  /** Faults, concluded ones left out, that some rule may yet conclude and none excludes. */
  SortedSet<String> stillPossible() {
    SortedSet<String> faults = faults(possible(), Standing::concluded);
    faults.removeAll(faults(firing.stream(), Standing::concluded));
    faults.removeAll(excluded());
    return faults;
  }

  /** Faults that no rule can conclude any more, and faults that a rule excludes. */
  SortedSet<String> ruledOut() {
    SortedSet<String> faults = faults(symptom().rules().values().stream(), Standing::concluded);
    faults.removeAll(faults(possible(), Standing::concluded));
    faults.addAll(excluded());
    return faults;
  }

  private static SortedSet<String> faults(
      Stream<Rule> rules, Function<Rule, Collection<String>> which) {
    SortedSet<String> faults = new TreeSet<>();
    rules.forEach(rule -> faults.addAll(which.apply(rule)));
    return faults;
  }

  private static Collection<String> concluded(Rule rule) {
    return rule.conclusion() instanceof Conclusion.Conclude conclude
        ? conclude.faults()
        : List.of();
  }

  private static Collection<String> excluded(Rule rule) {
    return rule.conclusion() instanceof Conclusion.Exclude exclude ? exclude.faults() : List.of();
  }

  private Symptom symptom() {
    return rules.symptom();
  }
}
