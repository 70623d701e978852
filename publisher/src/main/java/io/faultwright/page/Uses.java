package io.faultwright.page;

import io.faultwright.model.Answer;
import io.faultwright.model.Derived;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.Unit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What points to what. */
final class Uses {
  private final KnowledgeBase kb;
  private final SortedMap<String, SortedSet<String>> readings = new TreeMap<>();
  private final SortedMap<String, SortedSet<String>> faults = new TreeMap<>();
  private final SortedMap<String, SortedSet<String>> readBy = new TreeMap<>();
  private final SortedMap<String, SortedSet<String>> concludedBy = new TreeMap<>();

  Uses(KnowledgeBase kb) {
    this.kb = kb;
    Subjects subjects = new Subjects(kb);
    kb.symptoms()
        .forEach(
            (id, symptom) -> {
              readings.put(id, subjects.of(symptom));
              faults.put(id, faultsOf(symptom));
              turn(id, readings.get(id), readBy);
              turn(id, faults.get(id), concludedBy);
            });
  }

  private static void turn(
      String symptom, SortedSet<String> named, SortedMap<String, SortedSet<String>> by) {
    named.forEach(id -> by.computeIfAbsent(id, none -> new TreeSet<>()).add(symptom));
  }

  private static SortedSet<String> faultsOf(Symptom symptom) {
    return Sorted.set(
        symptom.rules().values().stream()
            .map(Rule::conclusion)
            .flatMap(conclusion -> conclusion.answers().stream())
            .filter(Answer.OfFault.class::isInstance)
            .map(Answer::name)
            .toList());
  }

  /** Readings that working a symptom may need. */
  SortedSet<String> readingsOf(String symptom) {
    return readings.get(symptom);
  }

  /** Faults a symptom can conclude. */
  SortedSet<String> faultsOf(String symptom) {
    return faults.get(symptom);
  }

  SortedSet<String> symptomsWithReading(String reading) {
    return readBy.getOrDefault(reading, Sorted.set(List.of()));
  }

  SortedSet<String> symptomsWithFault(String fault) {
    return concludedBy.getOrDefault(fault, Sorted.set(List.of()));
  }

  /** Ids of readings that are computed with the refrigerant of the machine. */
  List<String> readingsWithRefrigerant() {
    return kb.readings().values().stream().filter(this::needsRefrigerant).map(Reading::id).toList();
  }

  boolean needsRefrigerant(Reading reading) {
    return reading.derived().filter(Derived::needsRefrigerant).isPresent()
        || reading.operands().stream().map(kb.readings()::get).anyMatch(this::needsRefrigerant);
  }

  /** The refrigerants of the models, where some reading is computed with them. */
  Collection<Refrigerant> refrigerants() {
    return readingsWithRefrigerant().isEmpty() ? List.of() : kb.equipment().refrigerants().values();
  }

  /** Whether the pressures that these readings are computed from are written in psi or inHg. */
  boolean writtenInUs() {
    return readingsWithRefrigerant().stream()
        .flatMap(id -> kb.readings().get(id).operands().stream())
        .flatMap(id -> unit(kb.readings().get(id)).stream())
        .anyMatch(unit -> unit.symbol().startsWith("psi") || unit.symbol().startsWith("inHg"));
  }

  private static Optional<Unit> unit(Reading reading) {
    return reading
        .domain()
        .match(measured -> Optional.of(measured.unit()), choice -> Optional.empty());
  }

  /** Readings that show a caution. */
  Stream<Reading> readingsWithCaution(String caution) {
    return kb.readings().values().stream().filter(reading -> reading.cautions().contains(caution));
  }

  /** Faults that show a caution, at one of their steps or before all. */
  Stream<Fault> faultsWithCaution(String caution) {
    return kb.faults().values().stream().filter(fault -> cautionsOf(fault).contains(caution));
  }

  /** Every caution that a fault's page shows. */
  static SortedSet<String> cautionsOf(Fault fault) {
    return Sorted.set(
        Stream.concat(
                fault.cautions().stream(),
                Stream.concat(fault.remedy().stream(), fault.verify().stream())
                    .flatMap(step -> step.cautions().stream()))
            .collect(Collectors.toSet()));
  }
}
