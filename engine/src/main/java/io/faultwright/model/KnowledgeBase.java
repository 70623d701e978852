package io.faultwright.model;

import java.util.SortedMap;

/**
 * A whole handbook's worth of rules.
 *
 * @param handbook title page
 * @param equipment what the rules are about
 * @param readings what a technician can observe, by id
 * @param limits tables of low and high, by the id of the reading they judge
 * @param faults causes, by id
 * @param symptoms complaints with their rules, by id
 * @param nevers statements that hold for every symptom, by id
 * @param cases recorded situations, by id
 * @param cautions warnings, by id
 * @param parts spare parts, by id
 * @param guides Markdown pages, by id
 */
public record KnowledgeBase(
    Handbook handbook,
    Equipment equipment,
    SortedMap<String, Reading> readings,
    SortedMap<String, LimitsTable> limits,
    SortedMap<String, Fault> faults,
    SortedMap<String, Symptom> symptoms,
    SortedMap<String, Never> nevers,
    SortedMap<String, Case> cases,
    SortedMap<String, Caution> cautions,
    SortedMap<String, Part> parts,
    SortedMap<String, Guide> guides) {
  public KnowledgeBase {
    readings = Sorted.copy(readings);
    limits = Sorted.copy(limits);
    faults = Sorted.copy(faults);
    symptoms = Sorted.copy(symptoms);
    nevers = Sorted.copy(nevers);
    cases = Sorted.copy(cases);
    cautions = Sorted.copy(cautions);
    parts = Sorted.copy(parts);
    guides = Sorted.copy(guides);
  }
}
