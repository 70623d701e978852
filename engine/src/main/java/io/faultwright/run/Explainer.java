package io.faultwright.run;

import io.faultwright.compile.LimitsBook;
import io.faultwright.compile.Statement;
import io.faultwright.compile.Statement.Kind;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.model.Truth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Tells why a decision came out as it did. */
final class Explainer {
  private final KnowledgeBase base;
  private final Decision decision;
  private final Reasons reasons;
  private final MissingLimits missingLimits;

  Explainer(KnowledgeBase base, LimitsBook limits, Decision decision) {
    this.base = base;
    this.decision = decision;
    this.reasons = new Reasons(base, limits, decision.facts());
    this.missingLimits = new MissingLimits(limits, decision.facts());
  }

  Trace explain() {
    Verdict verdict = decision.verdict();
    return verdict.status().worked() ? worked(verdict) : stopped(verdict);
  }

  private Trace worked(Verdict verdict) {
    SortedMap<String, RuleTrace> rules = new TreeMap<>();
    symptom().rules().values().forEach(rule -> rules.put(rule.id(), trace(rule)));
    return new Trace(
        symptom().id(),
        verdict,
        rules,
        decision.standing().stillPossible(),
        decision.standing().ruledOut(),
        next(rules),
        missingLimits.among(statements()));
  }

  private Optional<String> next(SortedMap<String, RuleTrace> rules) {
    List<SortedSet<String>> open = new ArrayList<>();
    for (RuleTrace rule : rules.values()) {
      if (rule instanceof RuleTrace.CouldFire could) {
        open.add(could.missing());
      }
    }
    return new NextReading(base, decision.facts().situation()).among(open);
  }

  private RuleTrace trace(Rule rule) {
    Truth truth = decision.standing().truth(rule.id());
    if (truth == Truth.FALSE) {
      return new RuleTrace.CannotFire(reasons.of(rule.when()));
    }
    SortedSet<String> silencers = decision.standing().silencers(rule.id());
    if (!silencers.isEmpty()) {
      return new RuleTrace.Silenced(silencers);
    }
    SortedSet<String> waiting = decision.standing().waitingFor(rule.id());
    if (truth == Truth.UNKNOWN) {
      return new RuleTrace.CouldFire(reasons.of(rule.when()), waiting);
    }
    return waiting.isEmpty()
        ? new RuleTrace.Fired(reasons.of(rule.when()))
        : new RuleTrace.CouldFire(open(waiting), waiting);
  }

  private List<TestTrace> open(SortedSet<String> rules) {
    return rules.stream()
        .map(symptom().rules()::get)
        .flatMap(rule -> reasons.of(rule.when()).stream())
        .toList();
  }

  private Trace stopped(Verdict verdict) {
    List<Note> notes = new ArrayList<>(why(verdict.status()));
    Optional<String> next =
        verdict.status() == Status.ASK_FIRST ? nextFirst(notes) : Optional.empty();
    notes.addAll(missingLimits.among(statements()));
    return new Trace(
        symptom().id(), verdict, new TreeMap<>(), new TreeSet<>(), new TreeSet<>(), next, notes);
  }

  private List<Note> why(Status status) {
    return switch (status) {
      case TAKE_AGAIN -> decision.violated().mapToObj(this::never).toList();
      case NOT_THIS_SYMPTOM -> List.of(new Note.NotRecognised(reasons.of(symptom().recognise())));
      default -> List.of(first());
    };
  }

  private Note never(int position) {
    Statement statement = decision.rules().statement(position);
    boolean anywhere = statement.kind() == Kind.NEVER_ANYWHERE;
    Never never = (anywhere ? base.nevers() : symptom().nevers()).get(statement.id());
    return new Note.NeverViolated(never.id(), anywhere, never.because(), reasons.of(never.when()));
  }

  private Note first() {
    int position = decision.doubtfulFirst().orElseThrow();
    int index = Integer.parseInt(decision.rules().statement(position).id());
    Symptom.First first = symptom().first().get(index);
    return new Note.First(index, first.otherwise(), reasons.of(first.when()));
  }

  private Optional<String> nextFirst(List<Note> notes) {
    SortedSet<String> missing = new TreeSet<>();
    for (Note note : notes) {
      if (note instanceof Note.First first) {
        first.tests().forEach(test -> missing.addAll(test.missing()));
      }
    }
    return new NextReading(base, decision.facts().situation()).among(List.of(missing));
  }

  private List<Statement> statements() {
    return decision.rules().statements();
  }

  private Symptom symptom() {
    return decision.rules().symptom();
  }
}
