package io.faultwright.compile;

import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import io.faultwright.model.Condition;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** Writes the statements of a symptom as rules in the executable model of Drools. */
final class RuleWriter {
  private static final String PACKAGE = "io.faultwright.rules";

  private final String symptom;
  private final ConditionCompiler conditions;
  private final Map<String, Integer> uses = new HashMap<>();

  RuleWriter(String symptom, TestBook tests) {
    this.symptom = symptom;
    this.conditions = new ConditionCompiler(tests);
  }

  KieBase write(List<Statement> statements) {
    statements.forEach(statement -> count(statement.condition()));
    return KieBaseBuilder.createKieBaseFromModel(model(statements));
  }

  private Model model(List<Statement> statements) {
    ModelImpl model = new ModelImpl();
    for (int i = 0; i < statements.size(); i++) {
      model.addRule(write(statements.get(i), i));
    }
    return model;
  }

  private Rule write(Statement statement, int position) {
    Variable<View> situation = declarationOf(View.class);
    PatternDef<View> pattern = pattern(situation);
    conjuncts(statement.condition()).forEach((text, part) -> constrain(pattern, text, part));
    return rule(PACKAGE, symptom + " " + statement.name())
        .build(pattern, on(situation).execute(view -> view.decide(position)));
  }

  private void constrain(PatternDef<View> pattern, String text, Condition part) {
    Predicate<View> predicate = conditions.compile(part);
    pattern.expr(text, predicate::test);
  }

  private void count(Condition condition) {
    parts(condition)
        .map(Canonical::of)
        .distinct()
        .forEach(text -> uses.merge(text, 1, Integer::sum));
  }

  /** Most used first, so that rules share a long beginning of their constraints. */
  private Map<String, Condition> conjuncts(Condition condition) {
    Map<String, Condition> distinct =
        new TreeMap<>(
            Comparator.comparing((String text) -> -uses.get(text)).thenComparing(text -> text));
    parts(condition).forEach(part -> distinct.putIfAbsent(Canonical.of(part), part));
    return distinct;
  }

  private static Stream<Condition> parts(Condition condition) {
    return condition.match(
        all -> all.parts().stream().flatMap(RuleWriter::parts), Stream::of, Stream::of, Stream::of);
  }
}
