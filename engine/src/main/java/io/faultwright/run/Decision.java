package io.faultwright.run;

import io.faultwright.compile.Facts;
import io.faultwright.compile.Statement.Kind;
import io.faultwright.model.Answer;
import io.faultwright.model.Truth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** What follows from the statements of a symptom, once Drools has decided them. */
final class Decision {
  private final SymptomRules rules;
  private final Facts facts;
  private final Standing standing;

  Decision(SymptomRules rules, Facts facts) {
    this.rules = rules;
    this.facts = facts;
    this.standing = new Standing(rules, facts);
  }

  SymptomRules rules() {
    return rules;
  }

  Facts facts() {
    return facts;
  }

  Standing standing() {
    return standing;
  }

  Verdict verdict() {
    if (any(Kind.NEVER_ANYWHERE, Truth.TRUE) || any(Kind.NEVER, Truth.TRUE)) {
      return Verdict.silent(Status.TAKE_AGAIN);
    }
    if (any(Kind.RECOGNISE, Truth.FALSE)) {
      return Verdict.silent(Status.NOT_THIS_SYMPTOM);
    }
    OptionalInt first = doubtfulFirst();
    return first.isPresent() ? first(first.getAsInt()) : ofRules();
  }

  /** Whether some statement of a kind is decided so. */
  private boolean any(Kind kind, Truth truth) {
    for (int at : rules.positions(kind)) {
      if (facts.decided(at) == truth) {
        return true;
      }
    }
    return false;
  }

  /** Positions of the statements that say that the situation cannot happen. */
  IntStream violated() {
    return IntStream.concat(
        rules.decided(facts, Kind.NEVER_ANYWHERE, Truth.TRUE),
        rules.decided(facts, Kind.NEVER, Truth.TRUE));
  }

  /** Position of what must be right first and is not surely so, in the written order. */
  OptionalInt doubtfulFirst() {
    for (int at : rules.positions(Kind.FIRST)) {
      if (facts.decided(at) != Truth.TRUE) {
        return OptionalInt.of(at);
      }
    }
    return OptionalInt.empty();
  }

  private Verdict first(int position) {
    if (facts.decided(position) == Truth.UNKNOWN) {
      return Verdict.silent(Status.ASK_FIRST);
    }
    int index = Integer.parseInt(rules.statement(position).id());
    String otherwise = rules.symptom().first().get(index).otherwise();
    return new Verdict(
        Status.REFERRED, new TreeSet<>(List.of(new Answer.OfReferral(otherwise))), false);
  }

  private Verdict ofRules() {
    Optional<Verdict> alone = standing.only().flatMap(rules::alone);
    if (alone.isPresent()) {
      return alone.get();
    }
    SortedSet<Answer> answers = standing.answers();
    if (answers.isEmpty()) {
      return Verdict.silent(standing.open() ? Status.NOTHING_YET : Status.NO_ANSWER);
    }
    return new Verdict(Status.ANSWERED, answers, standing.contradictory(answers));
  }
}
