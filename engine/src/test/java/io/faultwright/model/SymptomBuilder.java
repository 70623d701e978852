package io.faultwright.model;

import static io.faultwright.model.Conditions.NOWHERE;

import io.faultwright.model.Symptom.First;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Builds symptoms for tests. */
public final class SymptomBuilder {
  private final String id;
  private Condition applies = Condition.ALWAYS;
  private Condition recognise = Condition.ALWAYS;
  private final List<First> first = new ArrayList<>();
  private final SortedMap<String, Rule> rules = new TreeMap<>();
  private final SortedMap<String, Never> nevers = new TreeMap<>();
  private final SortedSet<FaultPair> together = new TreeSet<>();

  private SymptomBuilder(String id) {
    this.id = id;
  }

  public static SymptomBuilder symptom(String id) {
    return new SymptomBuilder(id);
  }

  public SymptomBuilder applies(Condition condition) {
    applies = condition;
    return this;
  }

  public SymptomBuilder recognise(Condition condition) {
    recognise = condition;
    return this;
  }

  public SymptomBuilder first(Condition when, String otherwise) {
    first.add(new First(NOWHERE, when, otherwise));
    return this;
  }

  public SymptomBuilder never(String never, Condition when) {
    nevers.put(never, new Never(never, NOWHERE, when, "it cannot happen here"));
    return this;
  }

  public SymptomBuilder together(String one, String other) {
    together.add(FaultPair.of(one, other));
    return this;
  }

  public SymptomBuilder concludes(String rule, Condition when, String fault, String... insteadOf) {
    return rule(rule, when, conclude(fault), insteadOf);
  }

  public SymptomBuilder rule(
      String rule, Condition when, Conclusion conclusion, String... insteadOf) {
    rules.put(
        rule, new Rule(rule, NOWHERE, when, conclusion, "because", Sorted.set(List.of(insteadOf))));
    return this;
  }

  public static Conclusion conclude(String... faults) {
    return new Conclusion.Conclude(Sorted.set(List.of(faults)));
  }

  public static Conclusion exclude(String... faults) {
    return new Conclusion.Exclude(Sorted.set(List.of(faults)));
  }

  public Symptom build() {
    return new Symptom(
        id,
        NOWHERE,
        id,
        "",
        applies,
        recognise,
        first,
        rules,
        nevers,
        together,
        Optional.empty(),
        HazardOrder.LAST);
  }
}
