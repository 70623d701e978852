package io.faultwright.run;

import io.faultwright.compile.Candidates;
import io.faultwright.compile.Facts;
import io.faultwright.compile.LimitsBook;
import io.faultwright.model.Band;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Derived;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Why a condition holds, fails or is open in a situation: the tests that make it so. */
final class Reasons {
  private final KnowledgeBase base;
  private final LimitsBook limits;
  private final Facts facts;

  Reasons(KnowledgeBase base, LimitsBook limits, Facts facts) {
    this.base = base;
    this.limits = limits;
    this.facts = facts;
  }

  List<TestTrace> of(Condition condition) {
    return of(condition, Truth.TRUE).toList();
  }

  /** A part that comes out like the whole is a reason for it, in an `all` as in an `any`. */
  private Stream<TestTrace> of(Condition condition, Truth wanted) {
    return condition.match(
        all -> among(all.parts(), facts.met(all, wanted), wanted),
        any -> among(any.parts(), facts.met(any, wanted), wanted),
        not -> of(not.part(), wanted.not()),
        test -> Stream.of(new TestTrace(test, wanted == Truth.TRUE, found(test), missing(test))));
  }

  private Stream<TestTrace> among(List<Condition> parts, Truth met, Truth wanted) {
    return parts.stream()
        .filter(part -> facts.met(part, wanted) == met)
        .flatMap(part -> of(part, wanted));
  }

  private Found found(Test test) {
    String subject = test.subject();
    if (!base.readings().containsKey(subject)) {
      return new Found.OfEquipment(candidates().values(subject));
    }
    if (!facts.exists(test)) {
      return new Found.Lacking();
    }
    boolean against = test.pattern() instanceof AgainstLimits;
    return new Found.OfReading(
        facts.value(subject), operands(subject), against ? bands(subject) : List.of());
  }

  private SortedMap<String, Value> operands(String reading) {
    SortedMap<String, Value> values = new TreeMap<>();
    base.readings()
        .get(reading)
        .operands()
        .forEach(id -> facts.value(id).ifPresent(value -> values.put(id, value)));
    return values;
  }

  private List<Band> bands(String reading) {
    return candidates().builds().stream()
        .flatMap(build -> limits.band(reading, build, facts.situation()).stream())
        .distinct()
        .toList();
  }

  private SortedSet<String> missing(Test test) {
    SortedSet<String> subjects = new TreeSet<>();
    if (facts.met(test, Truth.TRUE) == Truth.UNKNOWN && canBeTaken(test.subject())) {
      subjects.add(test.subject());
      if (test.pattern() instanceof AgainstLimits) {
        limits.table(test.subject()).ifPresent(table -> addMissing(table, subjects));
      }
      subjects.removeIf(subject -> !open(subject));
      observable(subjects);
    }
    return subjects;
  }

  /** Replaces what is computed by what is missing to compute it. */
  private void observable(SortedSet<String> subjects) {
    for (String subject : List.copyOf(subjects)) {
      SortedSet<String> operands = new TreeSet<>();
      if (base.readings().containsKey(subject)) {
        operands.addAll(base.readings().get(subject).operands());
      }
      if (!operands.isEmpty()) {
        operands.removeIf(operand -> !open(operand));
        if (lacksRefrigerant(subject)) {
          operands.add(Equipment.MODEL);
        }
        observable(operands);
        subjects.remove(subject);
        subjects.addAll(operands);
      }
    }
  }

  /** Whether a reading needs the refrigerant, and the machine may have one or another. */
  private boolean lacksRefrigerant(String reading) {
    return base.readings().get(reading).derived().filter(Derived::needsRefrigerant).isPresent()
        && candidates().builds().stream()
                .map(build -> build.model().refrigerant())
                .distinct()
                .count()
            > 1;
  }

  private void addMissing(LimitsTable table, SortedSet<String> subjects) {
    subjects.addAll(table.by());
    boolean follows =
        candidates().builds().stream().anyMatch(b -> limits.followsDrivers(table.reading(), b));
    if (!follows) {
      table.drivers().forEach(subjects::remove);
    }
  }

  private boolean open(String subject) {
    return base.readings().containsKey(subject)
        ? facts.value(subject).isEmpty() && canBeTaken(subject)
        : candidates().differIn(subject);
  }

  private boolean canBeTaken(String subject) {
    boolean stated = facts.value(subject).filter(Value.NotTaken.class::isInstance).isPresent();
    return !stated && (!base.readings().containsKey(subject) || applies(subject));
  }

  private boolean applies(String reading) {
    Condition where = base.readings().get(reading).applies();
    return candidates().builds().stream().anyMatch(build -> build.satisfies(where));
  }

  private Candidates candidates() {
    return facts.candidates();
  }
}
