package io.faultwright.adequacy;

import io.faultwright.model.Build;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How good the cases of a knowledge base are.
 *
 * @param handbook title of the handbook
 * @param counts of the cases
 * @param builds published equipment, in a fixed order
 * @param symptoms what the cases cover, by symptom
 * @param mutants mistakes put into the knowledge base; absent where they were not asked for
 * @param done how much of the work was done; less than all where it was stopped
 */
public record Measured(
    String handbook,
    Counts counts,
    List<Build> builds,
    List<Coverage> symptoms,
    Optional<List<MutantStatus>> mutants,
    Done done) {
  /**
   * How many cases there are.
   *
   * @param counted those that pass, which are what is measured
   * @param failed those that come out otherwise than they expect
   * @param unconfirmed those that nobody has confirmed
   */
  public record Counts(int counted, int failed, int unconfirmed) {}

  /**
   * How far the work came.
   *
   * @param pieces of it that were done
   * @param of all of them
   */
  public record Done(int pieces, int of) {
    /** Whether nothing was left out. */
    public boolean whole() {
      return pieces == of;
    }
  }

  public Measured {
    builds = List.copyOf(builds);
    symptoms = List.copyOf(symptoms);
    mutants = mutants.map(List::copyOf);
  }

  /** All symptoms together. */
  public Map<Criterion, Tally> tallies() {
    Map<Criterion, Tally> all = new EnumMap<>(Criterion.class);
    symptoms.forEach(
        symptom -> symptom.tallies().forEach((one, tally) -> all.merge(one, tally, Tally::plus)));
    return all;
  }

  /** How many of the goals that a build can show its cases do, in all symptoms. */
  public Tally on(Build build) {
    return symptoms.stream().map(symptom -> symptom.on(build)).reduce(new Tally(0, 0), Tally::plus);
  }

  /** Mistakes noticed of those that change something. */
  public Optional<MutationScore> score() {
    return mutants.map(MutationScore::of);
  }
}
