package io.faultwright.compile;

import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import io.faultwright.model.Condition;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.functions.Predicate1;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** Writes the statements of a symptom as rules in the executable model of Drools. */
final class RuleWriter {
  private static final String PACKAGE = "io.faultwright.rules";

  /** A part of a condition, with the text by which Drools knows it. */
  private static final class Constraint {
    private final String text;
    private final Predicate1<View> predicate;
    private int uses;

    Constraint(String text, Predicate1<View> predicate) {
      this.text = text;
      this.predicate = predicate;
    }
  }

  private final String symptom;
  private final ConditionCompiler conditions;
  private final Map<String, Constraint> constraints = new HashMap<>();

  RuleWriter(String symptom, TestBook tests) {
    this.symptom = symptom;
    this.conditions = new ConditionCompiler(tests);
  }

  KieBase write(List<Statement> statements) {
    List<Collection<Constraint>> all =
        statements.stream().map(statement -> constraints(statement.condition())).toList();
    all.forEach(some -> some.forEach(constraint -> constraint.uses++));
    return KieBaseBuilder.createKieBaseFromModel(model(statements, all));
  }

  private Model model(List<Statement> statements, List<Collection<Constraint>> constraints) {
    ModelImpl model = new ModelImpl();
    for (int i = 0; i < statements.size(); i++) {
      model.addRule(write(symptom + " " + statements.get(i).name(), constraints.get(i), i));
    }
    return model;
  }

  /** Most used constraints first, so that rules share a long beginning. */
  private static Rule write(String name, Collection<Constraint> constraints, int position) {
    Variable<View> situation = declarationOf(View.class);
    PatternDef<View> pattern = pattern(situation);
    constraints.stream()
        .sorted(Comparator.comparing((Constraint one) -> -one.uses).thenComparing(one -> one.text))
        .forEach(one -> pattern.expr(one.text, one.predicate));
    return rule(PACKAGE, name).build(pattern, on(situation).execute(view -> view.decide(position)));
  }

  /** The distinct parts that must all hold. */
  private Collection<Constraint> constraints(Condition condition) {
    Map<String, Constraint> distinct = new TreeMap<>();
    parts(condition)
        .map(this::constraint)
        .forEach(constraint -> distinct.put(constraint.text, constraint));
    return distinct.values();
  }

  private Constraint constraint(Condition part) {
    return constraints.computeIfAbsent(
        Canonical.of(part), text -> new Constraint(text, conditions.compile(part)::test));
  }

  private static Stream<Condition> parts(Condition condition) {
    return condition.match(
        all -> all.parts().stream().flatMap(RuleWriter::parts), Stream::of, Stream::of, Stream::of);
  }
}
