package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.model.Symptom.First;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Mistakes in the rules of a symptom, and in what must be right before it is worked. */
final class RuleVariants {
  private final Symptom symptom;
  private final ConditionVariants conditions;
  private final TreeSet<String> faults = new TreeSet<>();
  private final TreeSet<String> symptoms;

  RuleVariants(KnowledgeBase kb, Symptom symptom) {
    this.symptom = symptom;
    this.conditions = new ConditionVariants(kb);
    this.symptoms = new TreeSet<>(kb.symptoms().keySet());
    symptom.rules().values().stream()
        .flatMap(rule -> rule.conclusion().answers().stream())
        .filter(Answer.OfFault.class::isInstance)
        .forEach(answer -> faults.add(answer.name()));
    symptoms.remove(symptom.id());
  }

  /** The symptom with one mistake in a rule each. */
  List<Variant<Symptom>> of(Rule rule) {
    List<Variant<Symptom>> variants = new ArrayList<>();
    conditions
        .of(rule.when(), rule.place())
        .forEach(other -> variants.add(other.as(with(rule.withWhen(other.changed())))));
    variants.add(
        new Variant<>(
            without(rule),
            Operator.RULE_DELETED,
            "rule `" + rule.id() + "` left out",
            rule.place()));
    swapped(rule.conclusion())
        .ifPresent(
            other ->
                variants.add(
                    new Variant<>(
                        with(rule.withConclusion(other)),
                        Operator.CONCLUSION_SWAPPED,
                        words(rule.conclusion()) + " made " + words(other),
                        rule.place())));
    return variants;
  }

  private Symptom with(Rule rule) {
    SortedMap<String, Rule> rules = new TreeMap<>(symptom.rules());
    rules.put(rule.id(), rule);
    return symptom.withRules(rules);
  }

  private Symptom without(Rule rule) {
    SortedMap<String, Rule> rules = new TreeMap<>(symptom.rules());
    rules.remove(rule.id());
    return symptom.withRules(rules);
  }

  private Optional<Conclusion> swapped(Conclusion conclusion) {
    if (conclusion instanceof Conclusion.Refer refer) {
      return next(symptoms, refer.symptom()).map(Conclusion.Refer::new);
    }
    if (conclusion instanceof Conclusion.Escalate) {
      return faults.stream().findFirst().map(fault -> new Conclusion.Conclude(only(fault)));
    }
    if (conclusion instanceof Conclusion.Exclude exclude) {
      return next(faults, exclude.faults().first())
          .map(fault -> new Conclusion.Exclude(only(fault)));
    }
    return next(faults, ((Conclusion.Conclude) conclusion).faults().first())
        .map(fault -> new Conclusion.Conclude(only(fault)));
  }

  private static SortedSet<String> only(String fault) {
    return new TreeSet<>(List.of(fault));
  }

  /** The one after it, the first after the last; empty where there is no other. */
  private static Optional<String> next(TreeSet<String> all, String one) {
    return Optional.ofNullable(all.higher(one))
        .or(() -> all.stream().findFirst())
        .filter(other -> !other.equals(one));
  }

  private static String words(Conclusion conclusion) {
    if (conclusion instanceof Conclusion.Refer refer) {
      return "`refer: " + refer.symptom() + "`";
    }
    if (conclusion instanceof Conclusion.Escalate escalate) {
      return "`escalate: " + escalate.to() + "`";
    }
    if (conclusion instanceof Conclusion.Exclude exclude) {
      return "`exclude: " + String.join(", ", exclude.faults()) + "`";
    }
    return "`conclude: " + String.join(", ", ((Conclusion.Conclude) conclusion).faults()) + "`";
  }

  /** The symptom with one mistake each in what must be right first. */
  List<Variant<Symptom>> ofFirst() {
    List<Variant<Symptom>> variants = new ArrayList<>();
    for (int i = 0; i < symptom.first().size(); i++) {
      First first = symptom.first().get(i);
      for (Variant<Condition> other : conditions.of(first.when(), first.place())) {
        List<First> changed = new ArrayList<>(symptom.first());
        changed.set(i, new First(first.place(), other.changed(), first.otherwise()));
        variants.add(other.as(symptom.withFirst(changed)));
      }
      List<First> fewer = new ArrayList<>(symptom.first());
      fewer.remove(i);
      variants.add(
          new Variant<>(
              symptom.withFirst(fewer),
              Operator.RULE_DELETED,
              "what must be right first, else `" + first.otherwise() + "`, left out",
              first.place()));
    }
    return variants;
  }
}
