package io.faultwright.compile;

import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import org.kie.api.KieBase;

/** The rules of one symptom, for Drools. */
public final class SymptomProgram {
  private static final int MOST_MACHINES = 1_000;

  private final Symptom symptom;
  private final List<Build> builds;
  private final List<Statement> statements;
  private final TestBook tests;
  private final KieBase rules;
  private final Map<SortedMap<String, String>, Optional<Machine>> machines =
      new ConcurrentHashMap<>();

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
    return machine(situation.equipment()).map(machine -> new Facts(situation, machine, this));
  }

  /** What the equipment says, worked out once; at most for so many kinds of it. */
  private Optional<Machine> machine(SortedMap<String, String> equipment) {
    Optional<Machine> known = machines.get(equipment);
    if (known == null) {
      List<Build> left = Candidates.having(equipment, builds);
      known =
          left.isEmpty() ? Optional.empty() : Optional.of(new Machine(new Candidates(left), tests));
      if (machines.size() < MOST_MACHINES) {
        machines.put(equipment, known);
      }
    }
    return known;
  }

  TestBook tests() {
    return tests;
  }
}
