package io.faultwright.change;

import io.faultwright.model.Build;
import java.util.List;

/**
 * Everything that differs between two revisions.
 *
 * @param handbook title of the new revision
 * @param before which revision is the old one
 * @param after which revision is the new one
 * @param removed equipment that only the old revision publishes
 * @param added equipment that only the new revision publishes
 * @param symptoms those that both revisions have, by id
 * @param sequences what sequences of operation do otherwise, machine by machine
 * @param edits what is written differently, the parts of sequences included
 */
public record Comparison(
    String handbook,
    Revision before,
    Revision after,
    List<Build> removed,
    List<Build> added,
    List<SymptomChange> symptoms,
    List<SequenceChange> sequences,
    List<Edit> edits) {
  public Comparison {
    removed = removed.stream().sorted().toList();
    added = added.stream().sorted().toList();
    symptoms = List.copyOf(symptoms);
    sequences = List.copyOf(sequences);
    edits = edits.stream().sorted().toList();
  }

  /**
   * A revision as its title page says.
   *
   * @param number as the trainer counts
   * @param date ISO 8601
   */
  public record Revision(String number, String date) {}

  /** Whether a technician is told the same as before, in every situation on every machine. */
  public boolean sameMeaning() {
    return removed.isEmpty()
        && added.isEmpty()
        && symptoms.stream().allMatch(SymptomChange::unchanged)
        && edits.stream().noneMatch(Comparison::isSymptom);
  }

  /** Symptoms that only one of the revisions has. */
  public List<Edit> symptomsOfOneSide() {
    return edits.stream().filter(Comparison::isSymptom).toList();
  }

  private static boolean isSymptom(Edit edit) {
    return edit.whole() && edit.kind().equals("symptom");
  }

  /** What of a concern is written differently. */
  public List<Edit> edits(Edit.Concern concern) {
    return edits.stream().filter(edit -> edit.concern() == concern).toList();
  }
}
