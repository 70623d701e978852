package io.faultwright.compile;

import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Optional;
import org.kie.api.KieBase;

/** The rules of one symptom, for Drools. */
public final class SymptomProgram {
  private final Symptom symptom;
  private final List<Build> builds;
  private final List<Statement> statements;
  private final TestBook tests;
  private final KieBase rules;

  SymptomProgram(KnowledgeBase base, Symptom symptom, LimitsBook limits) {
    this.symptom = symptom;
    this.builds =
        base.equipment().builds().stream()
            .filter(build -> build.satisfies(symptom.applies()))
            .toList();
    this.statements = Statement.of(base, symptom);
    this.tests = new TestBook(statements, new ProbeMaker(base, limits));
    this.rules = new RuleWriter(symptom.id(), tests).write(statements);
  }

  public Symptom symptom() {
    return symptom;
  }

  /** What the rules decide, in the order of their positions. */
  public List<Statement> statements() {
    return statements;
  }

  /** The rules; a session takes one {@link View} at a time. */
  public KieBase rules() {
    return rules;
  }

  /** The fact for a situation; absent where the symptom is not offered for its equipment. */
  public Optional<Facts> facts(Situation situation) {
    List<Build> left = Candidates.having(situation.equipment(), builds);
    return left.isEmpty()
        ? Optional.empty()
        : Optional.of(new Facts(situation, new Candidates(left), this));
  }

  TestBook tests() {
    return tests;
  }
}
