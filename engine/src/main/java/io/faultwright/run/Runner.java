package io.faultwright.run;

import io.faultwright.compile.Facts;
import io.faultwright.compile.Program;
import io.faultwright.compile.SymptomProgram;
import io.faultwright.model.Case;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Runs situations through the rules. Several threads may use one runner. */
public final class Runner {
  private final KnowledgeBase base;
  private final Program program;
  private final Screening screening;
  private final DerivedValues derived;
  private final Map<String, SymptomRules> rules = new ConcurrentHashMap<>();

  public Runner(KnowledgeBase base, Program program) {
    this.base = base;
    this.program = program;
    this.screening = new Screening(base);
    this.derived = new DerivedValues(base);
  }

  /** What the rules of a symptom say about a situation, and why. */
  public Trace run(String symptom, Situation situation) {
    return run(
        symptom,
        situation,
        stop -> stopped(symptom, stop, situation),
        decision -> new Explainer(base, program.limits(), decision).explain());
  }

  /** What the rules of a symptom say about a situation; quicker than with the reasons. */
  public Verdict verdict(String symptom, Situation situation) {
    return run(symptom, situation, Verdict::silent, Decision::verdict);
  }

  /** What the rules of a symptom say about a situation, and which of them; quick too. */
  public Firing firing(String symptom, Situation situation) {
    return run(
        symptom,
        situation,
        stop -> Firing.silent(Verdict.silent(stop), situation),
        Decision::firing);
  }

  /** Every case of the knowledge base, in the order of their ids. */
  public List<CaseResult> runCases() {
    return base.cases().values().stream().map(this::run).toList();
  }

  public CaseResult run(Case recorded) {
    return new CaseResult(recorded, run(recorded.symptom(), recorded.given()));
  }

  private <T> T run(
      String symptom,
      Situation situation,
      Function<Status, T> stopped,
      Function<Decision, T> decided) {
    Optional<SymptomProgram> found = program.of(symptom);
    if (found.isEmpty()) {
      return stopped.apply(Status.UNKNOWN_SYMPTOM);
    }
    Optional<Facts> facts = found.get().facts(derived.complete(situation));
    if (facts.isEmpty()) {
      return stopped.apply(
          screening.builds(situation) ? Status.DOES_NOT_APPLY : Status.NO_SUCH_EQUIPMENT);
    }
    return screening.strangeReadings(situation).isEmpty()
        ? decided.apply(decide(found.get(), facts.get()))
        : stopped.apply(Status.CHECK_VALUES);
  }

  private Decision decide(SymptomProgram program, Facts facts) {
    SymptomRules symptom =
        rules.computeIfAbsent(program.symptom().id(), id -> new SymptomRules(program));
    symptom.decide(facts);
    return new Decision(symptom, facts);
  }

  private Trace stopped(String symptom, Status status, Situation situation) {
    List<Note> notes = new ArrayList<>(screening.strangeFacts(situation));
    notes.addAll(screening.strangeReadings(situation));
    return new Trace(
        symptom,
        Verdict.silent(status),
        new TreeMap<>(),
        new TreeSet<>(),
        new TreeSet<>(),
        Optional.empty(),
        notes);
  }
}
