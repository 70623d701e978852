package io.faultwright.field;

import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Gathers what recorded jobs say about the rules. It keeps counts, not jobs: its memory depends on
 * the knowledge base, not on the number of jobs.
 */
public final class FieldBook {
  private static final int MOST_REMARKS = 200;

  /** Kinds of disagreement that are listed; beyond, rows are only counted. */
  private static final int MOST_KINDS = 5_000;

  /** Classes of readings that are counted, in rows that agree and again in those that do not. */
  private static final long MOST_CLASSES = 1_500_000;

  private final KnowledgeBase kb;
  private final ClassBook classes;
  private final Room agreeing = new Room(MOST_CLASSES);
  private final Room disagreeing = new Room(MOST_CLASSES);
  private final Room kinds = new Room(MOST_KINDS);
  private final SortedMap<String, RowCounts.Counter> symptoms = new TreeMap<>();
  private final Map<Ground, Said> grounds = new HashMap<>();
  private final FaultCounts faults;
  private final List<Remark> remarks = new ArrayList<>();
  private long furtherRemarks;
  private long uncounted;

  public FieldBook(KnowledgeBase kb) {
    this.kb = kb;
    this.classes = new ClassBook(kb);
    this.faults = new FaultCounts(kb);
  }

  /** Takes one job in. */
  public void add(FieldCase one) {
    Case job = one.recorded();
    RowCounts.Counter counter =
        symptoms.computeIfAbsent(job.symptom(), id -> new RowCounts.Counter());
    counter.read();
    counter.run(one.agrees());
    job.unclear().forEach(text -> remark(new Remark(job.symptom(), text, job.place())));
    if (one.confirmed()) {
      faults.add(job.expect());
      compare(one);
    }
  }

  private void remark(Remark remark) {
    if (remarks.size() < MOST_REMARKS) {
      remarks.add(remark);
    } else {
      furtherRemarks++;
    }
  }

  private void compare(FieldCase one) {
    Case job = one.recorded();
    Ground ground = new Ground(job.symptom(), one.firing().verdict(), one.firing().rules());
    boolean agrees = one.agrees().orElseThrow();
    Room room = agrees ? agreeing : disagreeing;
    said(ground)
        .flatMap(said -> said.rows(job.expect(), agrees, kinds))
        .ifPresentOrElse(
            rows -> rows.add(job.place(), known(ground, one), classes, room), () -> uncounted++);
  }

  /** What was found where this was said; empty where there is no room for another kind. */
  private Optional<Said> said(Ground ground) {
    Said known = grounds.get(ground);
    if (known == null && kinds.take()) {
      known = new Said();
      grounds.put(ground, known);
    }
    return Optional.ofNullable(known);
  }

  /** Readings are compared only where a rule answered. */
  private Map<String, Value> known(Ground ground, FieldCase one) {
    return ground.rules().isEmpty() ? Map.of() : classes.known(one.firing().known());
  }

  /**
   * What came of it.
   *
   * @param counts of all rows, those included that could not be read
   */
  public FieldReport report(RowCounts counts) {
    Separator separator = new Separator(classes);
    SortedMap<String, List<GroundReport>> reports = new TreeMap<>();
    symptoms.keySet().forEach(id -> reports.put(id, new ArrayList<>()));
    new TreeMap<>(grounds)
        .forEach(
            (ground, said) -> reports.get(ground.symptom()).add(said.report(ground, separator)));
    List<SymptomReport> all = new ArrayList<>();
    symptoms.forEach((id, counter) -> all.add(report(id, counter.counts(), reports.get(id))));
    return new FieldReport(
        kb.handbook().title(), counts, all, uncounted, remarks, furtherRemarks, faults.updates());
  }

  private static SymptomReport report(String id, RowCounts of, List<GroundReport> grounds) {
    return new SymptomReport(id, of.agreed(), of.disagreed(), of.open(), grounds);
  }
}
