package io.faultwright.field;

import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * Gathers what recorded jobs say about the rules. It keeps counts, not jobs: its memory depends on
 * the knowledge base, not on the number of jobs.
 */
public final class FieldBook {
  private static final int MOST_REMARKS = 200;

  /** Kinds of disagreement that are listed; beyond, rows are only counted. */
  private static final int MOST_KINDS = 10_000;

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

  /** How often something was said, and what was found then. */
  private static final class Said {
    private final Sample agreeing = new Sample();
    private final Map<SortedSet<Answer>, Sample> disagreeing = new HashMap<>();
    private long disagreed;
  }

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
    Said said = grounds.get(ground);
    if (said == null && kinds.take()) {
      said = new Said();
      grounds.put(ground, said);
    }
    if (said == null) {
      uncounted++;
      return;
    }
    Map<String, Value> known =
        ground.rules().isEmpty() ? Map.of() : classes.known(one.firing().known());
    sample(said, job, agrees)
        .ifPresentOrElse(
            sample -> sample.add(job.place(), known, classes, agrees ? agreeing : disagreeing),
            () -> uncounted++);
  }

  private Optional<Sample> sample(Said said, Case job, boolean agrees) {
    if (agrees) {
      return Optional.of(said.agreeing);
    }
    said.disagreed++;
    if (!said.disagreeing.containsKey(job.expect()) && kinds.take()) {
      said.disagreeing.put(job.expect(), new Sample());
    }
    return Optional.ofNullable(said.disagreeing.get(job.expect()));
  }

  /**
   * What came of it.
   *
   * @param counts of all rows, those included that could not be read
   */
  public FieldReport report(RowCounts counts) {
    SortedMap<String, List<GroundReport>> reports = new TreeMap<>();
    new TreeMap<>(grounds)
        .forEach(
            (ground, said) ->
                reports
                    .computeIfAbsent(ground.symptom(), id -> new ArrayList<>())
                    .add(report(ground, said)));
    List<SymptomReport> all = new ArrayList<>();
    symptoms.forEach(
        (id, counter) -> {
          RowCounts of = counter.counts();
          List<GroundReport> said = reports.getOrDefault(id, List.of());
          all.add(new SymptomReport(id, of.agreed(), of.disagreed(), of.open(), said));
        });
    return new FieldReport(
        kb.handbook().title(), counts, all, uncounted, remarks, furtherRemarks, faults.updates());
  }

  private GroundReport report(Ground ground, Said said) {
    Separator separator = new Separator(classes);
    List<Disagreement> disagreements = new ArrayList<>();
    said.disagreeing.forEach(
        (confirmed, rows) ->
            disagreements.add(
                new Disagreement(
                    confirmed,
                    rows.rows(),
                    rows.first(),
                    ground.rules().isEmpty()
                        ? Contrast.none(Contrast.Kind.NO_RULE)
                        : separator.contrast(rows, said.agreeing))));
    disagreements.sort(
        Comparator.comparing(Disagreement::rows)
            .reversed()
            .thenComparing(one -> Ground.names(one.confirmed())));
    return new GroundReport(ground, said.agreeing.rows(), said.disagreed, disagreements);
  }
}
