package io.faultwright.analysis.judge;

import io.faultwright.model.Answer;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Says what rules answer in a situation, by plain evaluation of their conditions. It knows nothing
 * of Drools, which says the same by other means, and is quick enough for thousands of changed
 * rules. Several threads may use one judge.
 */
public final class Judge {
  private final KnowledgeBase kb;
  private final DerivedValues derived;
  private final Map<String, Map<Build, Limits>> limits = new ConcurrentHashMap<>();

  public Judge(KnowledgeBase kb) {
    this.kb = kb;
    this.derived = new DerivedValues(kb);
  }

  public KnowledgeBase knowledge() {
    return kb;
  }

  /** A situation as a symptom's rules see it. */
  public Observed observe(Symptom symptom, Situation situation) {
    List<Build> builds =
        kb.equipment().builds().stream()
            .filter(build -> agrees(build, situation))
            .filter(build -> build.satisfies(symptom.applies()))
            .toList();
    return new Observed(this, situation, derived.complete(situation), builds);
  }

  private static boolean agrees(Build build, Situation situation) {
    return situation.equipment().entrySet().stream()
        .allMatch(fact -> build.attribute(fact.getKey()).equals(Optional.of(fact.getValue())));
  }

  /** What a symptom's rules say of a machine that was observed for it. */
  public Ruling decide(Symptom symptom, Observed observed) {
    if (observed.builds().isEmpty() || !inRange(observed.given())) {
      return Ruling.silent(Ruling.Stage.NO_SUCH_MACHINE);
    }
    if (isExcluded(symptom, observed)) {
      return Ruling.silent(Ruling.Stage.CANNOT_HAPPEN);
    }
    if (observed.met(symptom.recognise()) == Truth.FALSE) {
      return Ruling.silent(Ruling.Stage.NOT_THIS_SYMPTOM);
    }
    for (Symptom.First first : symptom.first()) {
      Truth truth = observed.met(first.when());
      if (truth != Truth.TRUE) {
        return truth == Truth.FALSE
            ? Ruling.referred(first.otherwise())
            : Ruling.silent(Ruling.Stage.ASK_FIRST);
      }
    }
    return ofRules(symptom, observed);
  }

  private boolean inRange(Situation given) {
    return given.readings().entrySet().stream()
        .allMatch(entry -> inRange(entry.getKey(), entry.getValue()));
  }

  private boolean inRange(String reading, Value value) {
    return kb.readings()
        .get(reading)
        .domain()
        .match(
            measured ->
                !(value instanceof Value.Number number)
                    || measured.range().contains(number.amount()),
            choice -> true);
  }

  private boolean isExcluded(Symptom symptom, Observed observed) {
    return holds(kb.nevers().values(), observed) || holds(symptom.nevers().values(), observed);
  }

  private static boolean holds(Iterable<Never> nevers, Observed observed) {
    for (Never never : nevers) {
      if (observed.met(never.when()) == Truth.TRUE) {
        return true;
      }
    }
    return false;
  }

  private Ruling ofRules(Symptom symptom, Observed observed) {
    List<Rule> firing = new ArrayList<>();
    for (Rule rule : symptom.rules().values()) {
      if (observed.met(rule.when()) == Truth.TRUE && !isSilenced(symptom, rule, observed)) {
        firing.add(rule);
      }
    }
    SortedSet<Answer> answers = new TreeSet<>();
    SortedSet<String> fired = new TreeSet<>();
    for (Rule rule : firing) {
      answers.addAll(rule.conclusion().answers());
      fired.add(rule.id());
    }
    return new Ruling(Ruling.Stage.WORKED, answers, fired);
  }

  private boolean isSilenced(Symptom symptom, Rule rule, Observed observed) {
    for (Rule other : symptom.rules().values()) {
      if (other.insteadOf().contains(rule.id()) && observed.met(other.when()) != Truth.FALSE) {
        return true;
      }
    }
    return false;
  }

  boolean isReading(String subject) {
    return kb.readings().containsKey(subject);
  }

  boolean exists(Test test, Build build) {
    if (!has(test.subject(), build)) {
      return false;
    }
    return !(test.pattern() instanceof AgainstLimits)
        || kb.limits().get(test.subject()).drivers().stream().allMatch(id -> has(id, build));
  }

  private boolean has(String subject, Build build) {
    return !isReading(subject) || build.satisfies(kb.readings().get(subject).applies());
  }

  Optional<Band> band(String reading, Build build, Situation situation) {
    LimitsTable table = kb.limits().get(reading);
    List<BigFraction> drivers =
        table.drivers().stream()
            .map(situation.readings()::get)
            .filter(Value.Number.class::isInstance)
            .map(value -> ((Value.Number) value).amount())
            .toList();
    return limits(table, build).at(drivers.size() == table.drivers().size() ? drivers : List.of());
  }

  private Limits limits(LimitsTable table, Build build) {
    return limits
        .computeIfAbsent(table.reading(), key -> new ConcurrentHashMap<>())
        .computeIfAbsent(build, key -> Limits.of(table, build));
  }
}
