package io.faultwright.model;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

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
 * @param setUps what is done once before several readings, by id
 * @param charts orders of work that a trainer wrote, by id
 * @param sequences sequences of operation, by id
 * @param wordbook synonyms and translations
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
    SortedMap<String, Guide> guides,
    SortedMap<String, SetUp> setUps,
    SortedMap<String, Chart> charts,
    SortedMap<String, Sequence> sequences,
    Wordbook wordbook) {
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
    setUps = Sorted.copy(setUps);
    charts = Sorted.copy(charts);
    sequences = Sorted.copy(sequences);
  }

  /** Ids of all readings that are asked before a reading, those before them included. */
  public SortedSet<String> before(String reading) {
    SortedSet<String> before = new TreeSet<>();
    addBefore(reading, before);
    return before;
  }

  private void addBefore(String id, Set<String> before) {
    Reading reading = readings.get(id);
    if (reading != null) {
      reading.after().stream().filter(before::add).forEach(one -> addBefore(one, before));
      reading.operands().forEach(operand -> addBefore(operand, before));
    }
  }

  /** The charts of a symptom, by id. */
  public List<Chart> charts(String symptom) {
    return charts.values().stream().filter(chart -> chart.symptom().equals(symptom)).toList();
  }

  /** A text of the rules as it is shown in the language of the handbook. */
  public String said(String text) {
    return wordbook
        .catalogue(handbook.language())
        .flatMap(catalogue -> catalogue.translation(text))
        .orElse(text);
  }

  /**
   * The same, whose texts are in another language now, below the address of that language.
   *
   * @param names what is still looked up in that language
   */
  public KnowledgeBase in(String language, Catalogue names) {
    SortedMap<String, Catalogue> catalogues = new TreeMap<>();
    catalogues.put(language, names);
    return with(handbook.in(language), new Wordbook(wordbook.synonyms(), catalogues));
  }

  /** The same in its own language only. */
  public KnowledgeBase untranslated() {
    return with(handbook, new Wordbook(wordbook.synonyms(), new TreeMap<>()));
  }

  /** The same as a release: its number and date stand on every page. */
  public KnowledgeBase released(int number, String date) {
    return with(handbook.released(number, date), wordbook);
  }

  /** The same with the revision and the date of another on every page. */
  public KnowledgeBase datedLike(KnowledgeBase other) {
    return with(handbook.dated(other.handbook.revision(), other.handbook.date()), wordbook);
  }

  private KnowledgeBase with(Handbook title, Wordbook words) {
    return new KnowledgeBase(
        title, equipment, readings, limits, faults, symptoms, nevers, cases, cautions, parts,
        guides, setUps, charts, sequences, words);
  }

  /**
   * What does not belong to single symptoms: no rules and their cases, charts and guides; nor
   * sequences of operation.
   */
  public KnowledgeBase besidesSymptoms() {
    return new KnowledgeBase(
        handbook,
        equipment,
        readings,
        limits,
        faults,
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        cautions,
        parts,
        new TreeMap<>(),
        setUps,
        new TreeMap<>(),
        new TreeMap<>(),
        wordbook);
  }

  /** The same with one of its symptoms replaced by another of the same id. */
  public KnowledgeBase with(Symptom symptom) {
    SortedMap<String, Symptom> others = new TreeMap<>(symptoms);
    others.put(symptom.id(), symptom);
    return new KnowledgeBase(
        handbook, equipment, readings, limits, faults, others, nevers, cases, cautions, parts,
        guides, setUps, charts, sequences, wordbook);
  }

  /** The same with one of its limits tables replaced by another for the same reading. */
  public KnowledgeBase with(LimitsTable table) {
    SortedMap<String, LimitsTable> others = new TreeMap<>(limits);
    others.put(table.reading(), table);
    return new KnowledgeBase(
        handbook, equipment, readings, others, faults, symptoms, nevers, cases, cautions, parts,
        guides, setUps, charts, sequences, wordbook);
  }

  /** The same with one chart more, or with another in place of the one of its id. */
  public KnowledgeBase with(Chart chart) {
    SortedMap<String, Chart> others = new TreeMap<>(charts);
    others.put(chart.id(), chart);
    return new KnowledgeBase(
        handbook, equipment, readings, limits, faults, symptoms, nevers, cases, cautions, parts,
        guides, setUps, others, sequences, wordbook);
  }
}
