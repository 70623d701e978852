package io.faultwright.run;

import io.faultwright.compile.Facts;
import io.faultwright.compile.Statement;
import io.faultwright.compile.Statement.Kind;
import io.faultwright.compile.SymptomProgram;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.model.Truth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The program of a symptom, ready to run, with its statements found by kind and rule. */
final class SymptomRules {
  private final SymptomProgram program;
  private final Sessions sessions;
  private final Map<Kind, int[]> positions = new EnumMap<>(Kind.class);
  private final Map<String, Integer> rules = new HashMap<>();
  private final Map<String, Set<String>> insteadOf = new HashMap<>();
  private final Map<String, Verdict> alone = new HashMap<>();
  private final Rule[] byPosition;

  SymptomRules(SymptomProgram program) {
    this.program = program;
    this.sessions = new Sessions(program.rules());
    Stream.of(Kind.values()).forEach(kind -> positions.put(kind, find(kind)));
    IntStream.of(positions.get(Kind.RULE)).forEach(at -> rules.put(statement(at).id(), at));
    this.byPosition = new Rule[statements().size()];
    rules.forEach((id, at) -> byPosition[at] = symptom().rules().get(id));
    symptom().rules().values().stream()
        .filter(rule -> rule.conclusion().answers().size() == 1)
        .forEach(rule -> alone.put(rule.id(), answering(rule)));
    symptom()
        .rules()
        .values()
        .forEach(rule -> rule.insteadOf().forEach(other -> put(other, rule.id())));
  }

  private static Verdict answering(Rule rule) {
    return new Verdict(Status.ANSWERED, Sorted.set(rule.conclusion().answers()), false);
  }

  private int[] find(Kind kind) {
    return IntStream.range(0, statements().size())
        .filter(at -> statement(at).kind() == kind)
        .toArray();
  }

  private void put(String silenced, String by) {
    insteadOf.computeIfAbsent(silenced, id -> new TreeSet<>()).add(by);
  }

  Symptom symptom() {
    return program.symptom();
  }

  SymptomProgram program() {
    return program;
  }

  List<Statement> statements() {
    return program.statements();
  }

  Statement statement(int position) {
    return statements().get(position);
  }

  /** The rules whose conditions are decided so, in the order of their ids. */
  List<Rule> rules(Facts facts, Truth truth) {
    List<Rule> found = new ArrayList<>();
    for (int at : positions(Kind.RULE)) {
      if (facts.decided(at) == truth) {
        found.add(byPosition[at]);
      }
    }
    return found;
  }

  /** Positions of the statements of a kind, in order; not to be changed. */
  int[] positions(Kind kind) {
    return positions.get(kind);
  }

  /** What comes out where only this rule fires; absent where it has not just one answer. */
  Optional<Verdict> alone(Rule rule) {
    return Optional.ofNullable(alone.get(rule.id()));
  }

  int position(String rule) {
    return rules.get(rule);
  }

  /** Rules that say they stand instead of this one. */
  Set<String> insteadOf(String rule) {
    return insteadOf.getOrDefault(rule, Set.of());
  }

  /** Positions of the statements of a kind that are decided so, in order. */
  IntStream decided(Facts facts, Kind kind, Truth truth) {
    return IntStream.of(positions(kind)).filter(at -> facts.decided(at) == truth);
  }

  void decide(Facts facts) {
    sessions.decide(facts);
  }
}
