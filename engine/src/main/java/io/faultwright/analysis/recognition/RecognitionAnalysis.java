package io.faultwright.analysis.recognition;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.BoxWords;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.Witness;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Symptom;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds complaints that two symptoms claim, and complaints that none claims. */
public final class RecognitionAnalysis {
  private final Space space;
  private final Diagrams diagrams;
  private final List<Symptom> symptoms;
  private final int possible;

  /** The situations in which each symptom is recognised. */
  private final int[] recognised;

  private RecognitionAnalysis(KnowledgeBase knowledge) {
    this.symptoms = List.copyOf(knowledge.symptoms().values());
    List<Condition> asked = new ArrayList<>();
    symptoms.forEach(symptom -> asked.add(symptom.recognise()));
    symptoms.forEach(symptom -> asked.add(symptom.applies()));
    this.space =
        Space.of(
            knowledge,
            knowledge.equipment().builds(),
            asked,
            knowledge.nevers().values().stream().map(Never::when).toList());
    this.diagrams = space.diagrams();
    this.possible = possible(knowledge);
    this.recognised = symptoms.stream().mapToInt(this::recognised).toArray();
  }

  private int possible(KnowledgeBase knowledge) {
    int left = space.consistent();
    for (Never never : knowledge.nevers().values()) {
      left = diagrams.minus(left, space.truth(never.when()).isTrue());
    }
    return left;
  }

  /** Ambiguous symptoms first, then unrecognised complaints. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    RecognitionAnalysis analysis = new RecognitionAnalysis(knowledge);
    List<Finding> findings = new ArrayList<>(analysis.ambiguous());
    findings.addAll(analysis.unrecognised());
    return findings;
  }

  private int recognised(Symptom symptom) {
    int shown = space.truth(symptom.recognise()).isTrue();
    return diagrams.and(diagrams.and(possible, shown), offered(symptom));
  }

  private int offered(Symptom symptom) {
    Axis.Subject equipment = new Axis.OfEquipment();
    BitSet cells =
        space
            .axis(equipment)
            .where(cell -> ((Cell.Builds) cell).representative().satisfies(symptom.applies()));
    return space.literal(equipment, cells);
  }

  private List<Finding> ambiguous() {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < symptoms.size(); i++) {
      for (int j = i + 1; j < symptoms.size(); j++) {
        int both = diagrams.and(recognised[i], recognised[j]);
        if (both != Diagrams.NONE) {
          findings.add(ambiguous(symptoms.get(i), symptoms.get(j), both));
        }
      }
    }
    return findings;
  }

  private Finding ambiguous(Symptom one, Symptom other, int both) {
    List<RegionTest> region = region(both).get(0);
    Finding finding =
        finding(
            FindingKind.AMBIGUOUS_SYMPTOMS,
            List.of(one.place(), other.place()),
            "one complaint is recognised as `" + one.id() + "` and as `" + other.id() + "`",
            "add to `recognise` the reading that separates them");
    return finding
        .in(one.id(), List.of())
        .shownBy(new Witness(space).of(both), region, Optional.empty());
  }

  private List<Finding> unrecognised() {
    int missed = diagrams.and(possible, complaint());
    for (int situations : recognised) {
      missed = diagrams.minus(missed, situations);
    }
    List<Finding> findings = new ArrayList<>();
    for (Box box : new Regions(space).cover(missed, possible)) {
      int inside = diagrams.and(missed, diagrams.box(box.cells().toArray(BitSet[]::new)));
      List<RegionTest> region = new BoxWords(space, possible).tests(box);
      findings.add(
          finding(
                  FindingKind.UNRECOGNISED_COMPLAINT,
                  complaintPlaces(),
                  "no symptom recognises the complaint " + Evidence.words(region),
                  "add it to the `recognise` of a symptom, or call the value `normal`")
              .shownBy(new Witness(space).of(inside), region, Optional.empty()));
    }
    return findings;
  }

  /** Situations in which a reading that can be a complaint is not normal. */
  private int complaint() {
    int complaint = Diagrams.NONE;
    for (Axis axis : space.axes()) {
      if (isComplaint(axis)) {
        Reading reading = reading(axis);
        BitSet abnormal =
            axis.where(
                cell -> cell instanceof Cell.Word w && !reading.normal().contains(w.value()));
        complaint = diagrams.or(complaint, space.literal(axis.subject(), abnormal));
      }
    }
    return complaint;
  }

  private boolean isComplaint(Axis axis) {
    boolean counted = axis.groups().stream().distinct().count() > 1;
    return axis.subject() instanceof Axis.OfReading && counted && !reading(axis).normal().isEmpty();
  }

  private Reading reading(Axis axis) {
    return space.knowledge().readings().get(((Axis.OfReading) axis.subject()).reading());
  }

  private List<Place> complaintPlaces() {
    return space.axes().stream()
        .filter(this::isComplaint)
        .map(axis -> reading(axis).place())
        .collect(Collectors.toList());
  }

  private List<List<RegionTest>> region(int situations) {
    BoxWords words = new BoxWords(space, possible);
    return new Regions(space).cover(situations, possible).stream().map(words::tests).toList();
  }

  private static Finding finding(
      FindingKind kind, List<Place> places, String message, String help) {
    return Finding.of(kind, places, message, help);
  }
}
