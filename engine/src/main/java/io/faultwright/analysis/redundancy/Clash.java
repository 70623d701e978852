package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Condition;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * A smallest set of statements that no possible situation satisfies together: deleting any one of
 * them leaves a situation (a minimal unsatisfiable core, found by deletion).
 */
final class Clash {
  private Clash() {}

  /**
   * A statement that takes part.
   *
   * @param words for a message
   * @param place where it stands
   * @param situations where it holds
   */
  record Statement(String words, Place place, int situations) {}

  static List<Statement> core(SymptomSpace symptom, Rule rule) {
    Diagrams diagrams = symptom.space().diagrams();
    List<Statement> core = new ArrayList<>(statements(symptom, rule));
    for (Statement statement : List.copyOf(core)) {
      List<Statement> fewer = new ArrayList<>(core);
      fewer.remove(statement);
      if (together(symptom.space(), diagrams, fewer) == Diagrams.NONE) {
        core = fewer;
      }
    }
    return core;
  }

  private static int together(Space space, Diagrams diagrams, List<Statement> statements) {
    return statements.stream().map(Statement::situations).reduce(space.consistent(), diagrams::and);
  }

  /** Everything that bears on a rule; the general statements first, so that they go first. */
  private static List<Statement> statements(SymptomSpace symptom, Rule rule) {
    List<Statement> statements = new ArrayList<>();
    symptom.nevers().forEach(never -> statements.add(never(symptom, never)));
    silencers(symptom, rule).forEach(other -> statements.add(silence(symptom, other)));
    parts(symptom.symptom().recognise())
        .forEach(part -> statements.add(condition(symptom, "`recognise`", part)));
    for (Symptom.First first : symptom.symptom().first()) {
      int holds = symptom.space().truth(first.when()).isTrue();
      statements.add(new Statement("`first`", first.place(), holds));
    }
    parts(rule.when()).forEach(part -> statements.add(condition(symptom, "condition", part)));
    return statements;
  }

  private static List<Rule> silencers(SymptomSpace symptom, Rule rule) {
    return symptom.symptom().rules().values().stream()
        .filter(other -> other.insteadOf().contains(rule.id()))
        .toList();
  }

  private static Statement never(SymptomSpace symptom, Never never) {
    int situations = symptom.space().diagrams().not(symptom.space().truth(never.when()).isTrue());
    return new Statement("`never` statement `" + never.id() + "`", never.place(), situations);
  }

  private static Statement silence(SymptomSpace symptom, Rule other) {
    int situations = symptom.space().diagrams().not(symptom.mayHold(other.id()));
    return new Statement("`instead-of` in rule `" + other.id() + "`", other.place(), situations);
  }

  private static Statement condition(SymptomSpace symptom, String kind, Condition part) {
    Condition.Test first = part.tests().findFirst().orElseThrow();
    return new Statement(
        kind + " on `" + first.subject() + "`",
        first.place(),
        symptom.space().truth(part).isTrue());
  }

  private static List<Condition> parts(Condition condition) {
    return condition instanceof Condition.All all ? all.parts() : List.of(condition);
  }
}
