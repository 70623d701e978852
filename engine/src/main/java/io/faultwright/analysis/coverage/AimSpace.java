package io.faultwright.analysis.coverage;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The situations of a symptom in which goals are looked for. */
public final class AimSpace {
  private final SymptomSpace symptom;
  private final Diagrams diagrams;

  /** The same builds, the very same object, are asked about for every goal. */
  private final Map<Collection<Build>, SortedSet<Build>> alike =
      Collections.synchronizedMap(new IdentityHashMap<>());

  private AimSpace(SymptomSpace symptom) {
    this.symptom = symptom;
    this.diagrams = symptom.space().diagrams();
  }

  /** Of the whole symptom. */
  public static AimSpace whole(SymptomSpace symptom) {
    return new AimSpace(symptom);
  }

  /**
   * Told apart only by what one rule, and those that silence it, ask. What other rules ask stays
   * open, which keeps the space small; a situation of it can be met in the whole symptom too.
   */
  public static AimSpace of(
      KnowledgeBase kb, Symptom whole, Rule rule, List<Condition> further, Deadline deadline) {
    SortedMap<String, Rule> rules = new TreeMap<>();
    whole.rules().values().stream()
        .filter(other -> other.insteadOf().contains(rule.id()))
        .forEach(other -> rules.put(other.id(), other));
    rules.put(rule.id(), rule);
    return new AimSpace(SymptomSpace.of(kb, whole.withRules(rules), further, deadline));
  }

  /** Told apart only by what comes before the rules. */
  public static AimSpace before(
      KnowledgeBase kb, Symptom whole, List<Condition> further, Deadline deadline) {
    return new AimSpace(SymptomSpace.of(kb, whole.withRules(new TreeMap<>()), further, deadline));
  }

  public Space space() {
    return symptom.space();
  }

  public Diagrams diagrams() {
    return diagrams;
  }

  public int possible() {
    return symptom.possible();
  }

  public int workable() {
    return symptom.workable();
  }

  public int firing(String rule) {
    return symptom.firing(rule);
  }

  public int whereTrue(Condition condition) {
    return space().truth(condition).isTrue();
  }

  public int whereFalse(Condition condition) {
    return space().truth(new Condition.Not(condition)).isTrue();
  }

  /** The builds on which a diagram holds a situation. */
  public SortedSet<Build> builds(int diagram) {
    return diagram == Diagrams.NONE ? new TreeSet<>() : in(diagrams.occurring(diagram)[0]);
  }

  private SortedSet<Build> in(BitSet cells) {
    return cells.stream()
        .mapToObj(equipment().cells()::get)
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The builds that nothing here tells apart from one of these. */
  public SortedSet<Build> alike(Collection<Build> builds) {
    return alike.computeIfAbsent(builds, asked -> Sorted.set(in(cells(asked))));
  }

  private BitSet cells(Collection<Build> builds) {
    return equipment()
        .where(cell -> ((Cell.Builds) cell).builds().stream().anyMatch(builds::contains));
  }

  private Axis equipment() {
    return space().axis(new Axis.OfEquipment());
  }

  /** The situations of a diagram that lie on one of some builds, or on one like them. */
  public int on(int diagram, Collection<Build> builds) {
    return diagrams.and(diagram, space().literal(new Axis.OfEquipment(), cells(builds)));
  }
}
