package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A complaint with the rules that diagnose it.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param about a sentence or two
 * @param applies equipment it is offered for
 * @param recognise readings that define the complaint
 * @param first what must be right before it is worked, in the written order
 * @param rules by id
 * @param nevers combinations that cannot happen here, by id
 * @param together pairs of faults that may be concluded at once
 * @param guide id of the page that explains it
 * @param hazards where the checks on live voltage and in the refrigerant circuit stand
 */
public record Symptom(
    String id,
    Place place,
    String title,
    String about,
    Condition applies,
    Condition recognise,
    List<First> first,
    SortedMap<String, Rule> rules,
    SortedMap<String, Never> nevers,
    SortedSet<FaultPair> together,
    Optional<String> guide,
    HazardOrder hazards) {
  public Symptom {
    first = List.copyOf(first);
    rules = Sorted.copy(rules);
    nevers = Sorted.copy(nevers);
    together = Sorted.set(together);
  }

  /** The same complaint with other rules. */
  public Symptom withRules(SortedMap<String, Rule> others) {
    return new Symptom(
        id, place, title, about, applies, recognise, first, others, nevers, together, guide,
        hazards);
  }

  /** The same complaint, of which other things must be right first. */
  public Symptom withFirst(List<First> others) {
    return new Symptom(
        id, place, title, about, applies, recognise, others, rules, nevers, together, guide,
        hazards);
  }

  /** No more of it than others need to refer to it. */
  Symptom titled() {
    return new Symptom(
        id,
        place,
        title,
        "",
        Condition.ALWAYS,
        Condition.ALWAYS,
        List.of(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeSet<>(),
        Optional.empty(),
        HazardOrder.LAST);
  }

  /**
   * What must be right before a symptom is worked.
   *
   * @param place where it stands
   * @param when what must hold
   * @param otherwise id of the symptom to work where it does not
   */
  public record First(Place place, Condition when, String otherwise) {}
}
